namespace Pattern.Core.Measurement;

/// <summary>How a <see cref="WorkedLength"/> came about.</summary>
public enum WorkedOperation
{
    /// <summary>Measured on the body. No operands.</summary>
    Measured,

    /// <summary>Chosen: an ease, a default, a reading of a table. No operands.</summary>
    Given,

    /// <summary>Taken from the draft with the tape. No operands.</summary>
    Drawn,

    /// <summary>The first operand plus the second.</summary>
    Sum,

    /// <summary>The first operand less the second.</summary>
    Difference,

    /// <summary>The one operand times the factor.</summary>
    Product,

    /// <summary>The one operand divided by the factor, a whole number.</summary>
    Quotient,

    /// <summary>The first operand, or the second where that is shorter.</summary>
    AtMost,

    /// <summary>The first operand, or the second where that is longer.</summary>
    AtLeast,
}

namespace Pattern.Core.Tests.Conventions;

/// <summary>One thing that a type of an assembly uses, as the compiled code says it.</summary>
/// <param name="FromNamespace">The namespace of the outermost type that uses it.</param>
/// <param name="From">That type.</param>
/// <param name="ToNamespace">The namespace of the outermost type that is used.</param>
/// <param name="To">The type that is used.</param>
/// <param name="Member">The member with its parameters, or nothing where only the type is used.</param>
internal sealed record AssemblyReference(string FromNamespace, string From, string ToNamespace, string To, string Member)
{
    public override string ToString() => $"{FromNamespace}.{From} uses {ToNamespace}.{To}{(Member.Length == 0 ? string.Empty : "." + Member)}";
}

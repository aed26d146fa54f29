using System;
using System.Diagnostics.Contracts;
using Pattern.Core.Diagnostics;
using Pattern.Core.Drafting;

namespace Pattern.Core.Blocks;

/// <summary>A change that a designer makes to a block. The library's own are in <c>BuiltInDesigns</c>; derive from this class, or call <see cref="Of"/>, for one of yours.</summary>
/// <remarks>What a design makes of a block is a block again, and gets all that any block gets; another design can go on from it. The block remembers its designs, so that drafting it
/// for another body, or otherwise, makes them again. A design holds nothing that changes.</remarks>
/// <example><code>
/// BlockDesign tucked = BlockDesign.Of("tucked", "1", work =>
/// {
///     work.Replace(work.FindPanel(PanelName.Front).TurnDartIntoTuck(EdgeName.Waist.Dart(1), Tape.Inches("2")));
///     work.Sheet.Note("Stitch the front darts for {0} only.", WorkedLength.Given(Tape.Inches("2")));
/// });
/// Block changed = block.With(tucked);
/// </code></example>
public abstract class BlockDesign : BlockProcedure
{
    // The base has no protected member of its own: what a block is made by is either of the two.
#pragma warning disable RS0022
    /// <summary>Describes a design.</summary>
    /// <param name="name">What it is called: lower case words; letters, digits, blanks and hyphens, 1 to 40 characters.</param>
    /// <param name="version">Another one whenever it makes something else than before; not empty.</param>
    /// <param name="settings">What its user may choose.</param>
    /// <exception cref="ArgumentException">The name is unusable, or two settings have one name.</exception>
    protected BlockDesign(string name, string version, params MethodSetting[] settings)
        : base(name, version, settings)
    {
    }
#pragma warning restore RS0022

    /// <summary>Makes a design out of a piece of a script.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="version">Another one whenever it makes something else than before.</param>
    /// <param name="style">Changes one block.</param>
    /// <param name="settings">What its user may choose.</param>
    /// <exception cref="ArgumentException">The name is unusable, or two settings have one name.</exception>
    [Pure]
    public static BlockDesign Of(string name, string version, Action<DesignDraft> style, params MethodSetting[] settings)
        => new ScriptedDesign(name, version, Guard.NotNull(style, nameof(style)), settings);

    /// <summary>Chooses the value of a setting; what is not chosen is as usual.</summary>
    /// <param name="setting">One of the design's settings.</param>
    /// <param name="value">Within what the setting allows.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not allowed.</exception>
    /// <exception cref="ConstructionException">The design has no such setting.</exception>
    [Pure]
    public DesignChoice With<T>(MethodSetting<T> setting, T value) => AsUsual().With(setting, value);

    /// <summary>The design with every setting as usual.</summary>
    [Pure]
    public DesignChoice AsUsual() => new(this, new SettingValue?[Settings.Count]);

    /// <summary>Changes one block: replaces, adds and drops panels, says how it is done by hand, what is sewn to what, and what holds now.</summary>
    /// <exception cref="ConstructionException">The design cannot be made of this block.</exception>
    protected abstract void Style(DesignDraft work);

    // The family of messages about lines and curves.
    private const int GeometryFamily = 3;

    internal Block Style(Block source, DesignChoice choice)
    {
        var values = new ListedValues(choice.ValuesIn(source.Body.Unit));
        DraftingSheet sheet = source.Record.Sheet is { } drafted ? new DraftingSheet(drafted) : new DraftingSheet();
        var work = new DesignDraft(choice, source, values, sheet);
        try
        {
            Style(work);
            return work.Finish();
        }
        catch (ConstructionException refusal) when ((int)refusal.Code / 1000 == GeometryFamily)
        {
            // What geometry says of a curve means nothing to who asked for a design: it says as well what could not be made.
            throw work.Refusal("One of its lines cannot be drawn on this block. Choose other amounts. " + refusal.Message);
        }
    }

    private sealed class ScriptedDesign(string name, string version, Action<DesignDraft> style, MethodSetting[] settings) : BlockDesign(name, version, settings)
    {
        protected override void Style(DesignDraft on) => style(on);
    }
}

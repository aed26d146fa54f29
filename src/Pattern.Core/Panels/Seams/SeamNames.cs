namespace Pattern.Core.Panels;

/// <summary>What the checks of a seam are called, made once for each seam.</summary>
internal sealed class SeamNames
{
    private readonly string _seam;
    private readonly string[] _stretches;

    internal SeamNames(string seam, string[] stretches)
    {
        _seam = seam;
        Notches = seam + " notches that pair";
        Stretches = seam + " stretches between notches";
        _stretches = new string[stretches.Length];
        for (int i = 0; i < stretches.Length; i++)
        {
            _stretches[i] = seam + " " + stretches[i];
        }
    }

    internal string Notches { get; }

    internal string Stretches { get; }

    internal string Of(int index, string stretch, int count) => _stretches.Length == count ? _stretches[index] : _seam + " " + stretch;
}

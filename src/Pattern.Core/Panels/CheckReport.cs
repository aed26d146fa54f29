using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>The proof of a block: every check, passed or not, and advice. A block that fails can still be looked at.</summary>
public sealed class CheckReport
{
    private readonly Finding[] _findings;

    internal CheckReport(Finding[] findings) => _findings = findings;

    /// <summary>All findings, in the order in which they were measured.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>The checks that did not pass.</summary>
    public IEnumerable<Finding> Failures => _findings.Where(finding => finding.Failed);

    /// <summary>What a cutter would look twice at. Advice neither passes nor fails.</summary>
    public IEnumerable<Finding> Advice => _findings.Where(finding => finding.Verdict == FindingVerdict.Advice);

    /// <summary>Whether every check passed, whatever the advice.</summary>
    public bool Passed => !_findings.Any(finding => finding.Failed);

    /// <summary>Looks for what was measured under a name.</summary>
    /// <param name="check">What was measured, such as <c>closed waist</c>.</param>
    /// <param name="place">The panel, or <c>block</c>.</param>
    /// <param name="finding">The first of that name and place, or null.</param>
    /// <returns>Whether it was measured.</returns>
    public bool TryFind(string check, string place, out Finding? finding)
    {
        finding = _findings.FirstOrDefault(one => one.Check == check && one.Place == place);
        return finding is not null;
    }

    /// <summary>Throws when a check failed, naming all that did; else does nothing.</summary>
    /// <exception cref="ConstructionException">At least one check failed.</exception>
    public void ThrowIfFailed()
    {
        if (Passed)
        {
            return;
        }

        Finding[] failures = Failures.ToArray();
        throw new ConstructionException(DiagnosticCode.ChecksFailed, failures.Length, CheckCount, MessageRegistry.Whole(string.Join("; ", failures.Select(f => f.ToString()))));
    }

    /// <summary>A verdict, one line for each check, and then the advice.</summary>
    public override string ToString()
        => string.Join("\n", new[] { Verdict() }.Concat(_findings.Where(finding => finding.Advice is null).Concat(Advice).Select(finding => finding.ToString()))) + "\n";

    /// <summary>One line: how many checks passed, or loudly how many did not.</summary>
    public string Verdict()
    {
        int failed = Failures.Count();
        return failed == 0
            ? $"All {CheckCount} checks passed."
            : $"DO NOT CUT: {failed} of {CheckCount} checks FAILED.";
    }

    internal int CheckCount => _findings.Count(finding => finding.Advice is null);
}

using System.Collections.Generic;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Panels;

/// <summary>The proof of a block: every check, passed or not. A block that fails can still be looked at.</summary>
public sealed class CheckReport
{
    private readonly Finding[] _findings;

    internal CheckReport(Finding[] findings) => _findings = findings;

    /// <summary>All findings, in the order in which a cutter would check: waist, hip, sides, darts, hem, outline.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>The findings that did not pass.</summary>
    public IEnumerable<Finding> Failures => _findings.Where(finding => !finding.Passed);

    /// <summary>Whether every check passed.</summary>
    public bool Passed => _findings.All(finding => finding.Passed);

    /// <summary>Throws when a check failed, naming all that did; else does nothing.</summary>
    /// <exception cref="ConstructionException">At least one check failed.</exception>
    public void ThrowIfFailed()
    {
        if (Passed)
        {
            return;
        }

        Finding[] failures = Failures.ToArray();
        throw new ConstructionException(DiagnosticCode.ChecksFailed, failures.Length, _findings.Length, MessageRegistry.Whole(string.Join("; ", failures.Select(f => f.ToString()))));
    }

    /// <summary>A verdict and one line for each check.</summary>
    public override string ToString()
        => string.Join("\n", new[] { Verdict() }.Concat(_findings.Select(finding => finding.ToString()))) + "\n";

    /// <summary>One line: how many checks passed, or loudly how many did not.</summary>
    public string Verdict()
    {
        int failed = Failures.Count();
        return failed == 0
            ? $"All {_findings.Length} checks passed."
            : $"DO NOT CUT: {failed} of {_findings.Length} checks FAILED.";
    }
}

using System.Collections.Generic;
using System.Linq;
using System.Xml.Linq;
using SvgPathProperties;

namespace Pattern.Core.Tests.Output;

/// <summary>An SVG file as an XML reader sees it, its paths measured by a library of its own.</summary>
internal static class SvgFile
{
    internal static IEnumerable<XElement> Paths(string svg) => XDocument.Parse(svg).Descendants().Where(element => element.Name.LocalName == "path");

    internal static string? Value(XElement element, string name) => element.Attribute(name)?.Value;

    /// <summary>The length of a path in millimetres.</summary>
    internal static double Measured(XElement path) => new SvgPath(Value(path, "d")!).Length;
}

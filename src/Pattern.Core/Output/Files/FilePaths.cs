using System;
using System.Linq;
using Pattern.Core.Diagnostics;

namespace Pattern.Core.Output;

/// <summary>Which paths files can be written to, on every system that they may be copied to.</summary>
internal static class FilePaths
{
    // Microsoft, "Naming Files, Paths, and Namespaces": reserved with any ending, such as nul.txt; the digits may be raised.
    private static readonly string[] Devices = ["CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$"];
    private static readonly string[] NumberedDevices = ["COM", "LPT"];
    private const string Numbers = "0123456789\u00B9\u00B2\u00B3";

    // POSIX keeps its devices in one folder. To replace a file there is to take the device away from every program.
    private const string DeviceFolder = "/dev/";

    /// <summary>A path that a file or a folder can have.</summary>
    /// <exception cref="ArgumentException">The path is empty, holds a NUL character, or names a device.</exception>
    internal static string Checked(string? path, string parameter)
    {
        Guard.Name(path, parameter);
        string? fault = Fault(path!);
        return fault is null ? path! : throw new ArgumentException(MessageRegistry.Format(DiagnosticCode.FilePathUnusable, parameter, Visible(path!), fault), parameter);
    }

    /// <summary>Whether the name of a file or a folder is that of a device.</summary>
    internal static bool IsDevice(string name)
    {
        string stem = name.Split('.', ':')[0].TrimEnd(' ');
        return Devices.Contains(stem, StringComparer.OrdinalIgnoreCase)
            || (stem.Length == 4 && NumberedDevices.Contains(stem.Substring(0, 3), StringComparer.OrdinalIgnoreCase) && Numbers.IndexOf(stem[3]) >= 0);
    }

    private static string? Fault(string path)
    {
        if (path.IndexOf('\0') >= 0)
        {
            return "it has a NUL character";
        }

        string? device = path.Split('/', '\\').FirstOrDefault(IsDevice);
        if (device is not null)
        {
            return device + " is the name of a device";
        }

        bool isInDevices = path.StartsWith(DeviceFolder, StringComparison.Ordinal) && path.IndexOf('/', DeviceFolder.Length) < 0;
        return isInDevices ? "it lies in the folder of the devices" : null;
    }

    private static string Visible(string path) => path.Replace('\0', '\uFFFD');
}

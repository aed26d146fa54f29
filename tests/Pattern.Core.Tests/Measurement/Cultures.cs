using System;
using System.Globalization;

namespace Pattern.Core.Tests.Measurement;

/// <summary>Runs a check under cultures with other digits, decimal signs, signs of minus and rules of case.</summary>
public static class Cultures
{
    public static TheoryData<string> Awkward => new() { "tr-TR", "de-DE", "ar-SA", "fa-IR", "sv-SE", "en-US", "" };

    public static void Under(string name, Action check)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo beforeUi = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
            CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(name);
            check();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = beforeUi;
        }
    }
}

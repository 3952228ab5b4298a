namespace Driveline.Web.Tests;

/// <summary>A test in a real browser; left out, and counted as skipped, on a machine without Chromium.</summary>
public sealed class BrowserFactAttribute : FactAttribute
{
    public BrowserFactAttribute()
    {
        if (Browser.Program is null)
        {
            Skip = "Chromium is not installed.";
        }
    }
}

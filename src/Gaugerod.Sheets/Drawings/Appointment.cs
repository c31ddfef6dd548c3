namespace Gaugerod.Sheets.Drawings;

/// <summary>Something in a calendar.</summary>
/// <param name="Id">Tells it from all others of its calendar, the same whenever it is made anew.</param>
/// <param name="Title">What it is.</param>
/// <param name="Begins">When it begins, as the clock on the wall shows there.</param>
/// <param name="Ends">When it ends; not before it begins.</param>
/// <param name="Words">What else is to be known.</param>
/// <param name="IsBusy">Whether somebody works; else it is only a time to wait for.</param>
public sealed record Appointment(string Id, string Title, DateTime Begins, DateTime Ends, string Words, bool IsBusy);

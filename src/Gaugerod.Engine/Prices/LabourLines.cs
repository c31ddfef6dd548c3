namespace Gaugerod.Engine.Prices;

/// <summary>Reckons how much there is of a task.</summary>
internal static class LabourLines
{
    /// <summary>The line of a task: hours from the setter's pace, or what the plan has of it.</summary>
    public static EstimateLine Of(LabourPrice task, IReadOnlyList<LabourAmount> work)
    {
        if (task.Of is not { } kind)
        {
            var (quantity, times) = (task.Quantity ?? Spread.Of(1), task.Factor == 1 ? "" : $", {PriceText.Plain(task.Factor)} times");
            return Line(task, quantity.Each(one => Estimator.Hundredths(one * task.Factor)), $"{(task.Quantity is null ? "all of it" : $"{PriceText.Plain(quantity)} as you say")}{times}");
        }

        var metric = work.Where(one => one.Kind == kind && (task.Run is null || string.Equals(one.Run, task.Run, StringComparison.Ordinal))).Sum(one => one.Amount);
        var unit = task.Pace?.Unit ?? task.Per;
        var amount = Estimator.Hundredths(PriceUnits.In(unit, metric));
        var how = $"{PriceWords.Of(kind)}{(task.Run is null ? "" : " of " + task.Run)}: {PriceUnits.Say(PriceText.Plain(amount), PriceUnits.Word(unit))}";
        if (task.Factor != 1) how += $", {PriceText.Plain(task.Factor)} times the work";
        var done = amount * task.Factor;
        if (task.Pace is not { Amount: var pace }) return Line(task, Spread.Of(Estimator.Hundredths(done)), how);

        // Whoever is quick takes few hours: the low comes from the high of the pace.
        how += $", {PriceUnits.Say(PriceText.Plain(pace), PriceUnits.Word(unit))} an hour";
        return Line(task, new(Estimator.Hundredths(done / pace.High), Estimator.Hundredths(done / pace.Likely), Estimator.Hundredths(done / pace.Low)), how);
    }

    private static EstimateLine Line(LabourPrice task, Spread quantity, string how) => new(CostGroup.Labour, task.Task, quantity, PriceUnits.Word(task.Per), task.Rate, how) { Note = task.Note };
}

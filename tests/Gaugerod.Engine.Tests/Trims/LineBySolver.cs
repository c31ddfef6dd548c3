using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Google.OrTools.Sat;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>
/// A line put to CP-SAT of Google.OrTools: so many pieces, each with its length; the least cost, then the greatest stagger, then the
/// longest shortest piece, one after another.
/// </summary>
internal sealed class LineBySolver
{
    private readonly CpModel _model = new();
    private readonly LineCase _asked;
    private readonly IntVar[] _pieces;
    private readonly BoolVar[] _short;
    private readonly IntVar _stagger;
    private readonly IntVar _shortest;

    private LineBySolver(LineCase asked, int count)
    {
        _asked = asked;
        var line = asked.Line;
        _pieces = [.. Enumerable.Range(0, count).Select(_ => _model.NewIntVar(line.Least, line.Stock, ""))];
        _short = [.. _pieces.Select(_ => _model.NewBoolVar(""))];
        (_stagger, _shortest) = (_model.NewIntVar(asked.Twice, 4 * line.Length, ""), _model.NewIntVar(line.Least, line.Stock, ""));
        for (var i = 0; i < count; i++)
        {
            _model.Add(_pieces[i] == line.Stock).OnlyEnforceIf(_short[i].Not());
            _model.Add(_pieces[i] < line.Stock).OnlyEnforceIf(_short[i]);
            _model.Add(_shortest <= _pieces[i] - (i == 0 ? line.BeginTakes : 0) - (i == count - 1 ? line.EndTakes : 0));
        }

        var odd = _model.NewIntVar(0, asked.Joints == TrimJoints.Centred && count > 1 ? 1 : 0, "");
        if (asked.Joints == TrimJoints.Centred && count % 2 == 1) _model.Add(odd == 0).OnlyEnforceIf(_short[count / 2]);
        _model.Add(LinearExpr.Sum(_pieces) + odd == line.Length - ((count - 1) * line.Joint));
        if (count == 1 && Shows(line.Begin) && Shows(line.End)) _model.Add(_short[0] == 0);
        for (var i = 0; asked.Joints == TrimJoints.Centred && i < count / 2; i++) _model.Add(_pieces[i] == _pieces[count - 1 - i]);
        if (count > 1) PlaceJoints();
    }

    public static string Best(LineCase asked)
    {
        var (least, most) = ((asked.Line.Length + asked.Line.Joint) / (asked.Line.Stock + asked.Line.Joint), (asked.Line.Length + asked.Line.Joint) / (asked.Line.Least + asked.Line.Joint));
        (LineBySolver Model, long Cost)? best = null;
        for (var count = (int)Math.Max(1, least); count <= most; count++)
        {
            var model = new LineBySolver(asked, count);
            if (best is { } known) model._model.Add(model.Cost() < known.Cost);
            if (model.Solve(model.Cost(), maximise: false) is { } found) best = (model, found);
        }

        if (best is not var (chosen, cost)) return "none";
        chosen._model.Add(chosen.Cost() == cost);
        long? stagger = null;
        if (asked.Joints is TrimJoints.Staggered or TrimJoints.Repeating && asked.Line.Beside.Count > 0 && chosen._pieces.Length > 1)
        {
            stagger = chosen.Solve(chosen._stagger, maximise: true)!.Value;
            chosen._model.Add(chosen._stagger >= stagger.Value);
        }

        var shortest = chosen.Solve(chosen._shortest, maximise: true)!.Value;
        const long Hundred = 100;
        return asked.Told((int)(cost / (Hundred * Hundred * Hundred) % Hundred), (int)(cost / (Hundred * Hundred) % Hundred), (int)(cost / Hundred % Hundred), (int)(cost % Hundred), stagger, shortest);
    }

    private static bool Shows(TrimEnd end) => end is TrimEnd.Stop or TrimEnd.Covers;

    /// <summary>The cost as one number, two digits each: for a centred line whether any piece between others is short, cuts, short pieces, those between others, pieces.</summary>
    private LinearExpr Cost()
    {
        var (line, last) = (_asked.Line, _pieces.Length - 1);
        var anyInner = _model.NewBoolVar("");
        var cost = LinearExpr.Constant(_pieces.Length);
        if (_asked.Joints == TrimJoints.Centred) cost += anyInner * 100_000_000;
        for (var i = 0; i <= last; i++)
        {
            var mitres = (i == 0 && line.Begin == TrimEnd.Mitre ? 1 : 0) + (i == last && line.End == TrimEnd.Mitre ? 1 : 0);
            cost += _short[i] * ((mitres == 0 ? 1_000_000 : 0) + 10_000 + (i > 0 && i < last ? 100 : 0));
            cost += mitres * 1_000_000;
            if (i > 0 && i < last) _model.AddImplication(_short[i], anyInner);
        }

        return cost;
    }

    private void PlaceJoints()
    {
        var (line, count) = (_asked.Line, _pieces.Length);
        var phase = line.Beside.Count > 1 ? _model.NewIntVar(0, (2 * (line.Beside[1].From - line.Beside[0].From)) - 1, "") : null;
        for (var i = 1; i < count; i++)
        {
            var middle = _model.NewIntVar(0, 2 * line.Length, "");
            _model.Add(middle == (LinearExpr.Sum(_pieces.Take(i)) * 2) + (((2 * i) - 1) * line.Joint));
            switch (_asked.Joints)
            {
                case TrimJoints.InLine:
                    var places = line.Beside.SelectMany(f => new[] { f.From + f.To - 1, f.From + f.To }).Where(m => m >= 0).ToArray();
                    _model.AddLinearExpressionInDomain(middle, Google.OrTools.Util.Domain.FromValues(places));
                    break;
                case TrimJoints.Staggered or TrimJoints.Centred when _asked.Joints == TrimJoints.Staggered || _asked.Twice > 0:
                    foreach (var f in line.Beside)
                    {
                        var above = _model.NewBoolVar("");
                        _model.Add(middle - (f.From + f.To) >= _stagger).OnlyEnforceIf(above);
                        _model.Add(f.From + f.To - middle >= _stagger).OnlyEnforceIf(above.Not());
                    }

                    break;
                case TrimJoints.Repeating when phase is null:
                    _model.Add(_stagger < 0);
                    break;
                case TrimJoints.Repeating:
                    var round = 2 * (line.Beside[1].From - line.Beside[0].From);
                    var turns = _model.NewIntVar(-1000, 1000, "");
                    _model.Add(middle - (line.Beside[0].From + line.Beside[0].To) == phase + (turns * round));
                    _model.Add(_stagger <= phase);
                    _model.Add(_stagger <= round - phase);
                    break;
            }
        }
    }

    private long? Solve(LinearExpr wanted, bool maximise)
    {
        if (maximise) _model.Maximize(wanted);
        else _model.Minimize(wanted);
        var solver = new CpSolver { StringParameters = "num_workers:1,random_seed:1" };
        var status = solver.Solve(_model);
        if (status == CpSolverStatus.Infeasible) return null;
        Assert.Equal(CpSolverStatus.Optimal, status);
        return (long)Math.Round(solver.ObjectiveValue);
    }
}

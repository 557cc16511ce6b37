using System.Collections.Immutable;
using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Results.Trips;
using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Solving;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Answering;
using RigLang.Editing.Hovering;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Quantities;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Noting;

/// <summary>Computed values behind the lines they follow from: few, short, and only where the line itself is written.</summary>
internal sealed class NoteBuilder
{
    private const int Longest = 40;

    private readonly View view;
    private readonly LineRange range;
    private readonly RigFile file;
    private readonly ImmutableArray<InlayNote>.Builder notes = ImmutableArray.CreateBuilder<InlayNote>();

    private DeclarationSyntax? current;

    private NoteBuilder(View view, RigFile file, LineRange range)
    {
        (this.view, this.file, this.range) = (view, file, range);
    }

    public static ImmutableArray<InlayNote> Of(View view, LinkedFile linked, LineRange range, CancellationToken cancel)
    {
        var builder = new NoteBuilder(view, linked.File, range);
        foreach (var declaration in linked.Declarations)
        {
            cancel.ThrowIfCancellationRequested();
            builder.Add(declaration);
        }

        return [.. builder.notes.OrderBy(note => note.Position)];
    }

    private void Add(Declaration declaration)
    {
        var first = file.FirstLineOf(declaration.Own.Syntax);
        if (first > range.End.Line || first + declaration.Own.Syntax.Lines.Length <= range.Start.Line)
        {
            return;
        }

        current = declaration.Own.Syntax;
        AddAnswers(declaration);
        switch (declaration.Kind)
        {
            case DeclarationKind.Rig:
                AddRig(declaration, view.State.Analysis.Rig(declaration));
                break;
            case DeclarationKind.Trip when view.State.Analysis.Trip(declaration) is { } trip:
                AddTrip(trip);
                break;
            case DeclarationKind.Weighing when view.State.Analysis.Weighing(declaration) is { } weighing:
                AddWeighing(weighing);
                break;
        }
    }

    /// <summary>What was found for a question stands behind it; of a part, for each of the rigs that differ.</summary>
    private void AddAnswers(Declaration declaration)
    {
        foreach (var line in AnswersAt.Of(view, declaration).GroupBy(pair => pair.Answer.Unknown.Line, ReferenceEqualityComparer.Instance as IEqualityComparer<Fact>))
        {
            var labels = line.Select(pair => (pair.Study, pair.Answer, Label: Label(pair.Answer))).Where(pair => pair.Label.Length > 0).ToList();
            var isOne = labels.Select(pair => pair.Label).Distinct().Count() == 1;
            var label = isOne ? labels[0].Label : string.Join(", ", labels.Select(pair => $"{pair.Study.Subjects[0].Title}: {pair.Label}"));
            Add(line.Key, label, () => new CardText().Bullets(labels.Select(pair => $"{pair.Study.Subjects[0].Title}: {pair.Label} ({pair.Answer.Unknown.Wish})")));
        }
    }

    private static string Label(Answer answer) => answer.Sort switch
    {
        AnswerSort.Found => $"is {AnswerWords.Value(answer.Unknown, answer.Value)}{(answer.Others.IsEmpty ? "" : $", or {AnswerWords.Value(answer.Unknown, answer.Others[0])}")}",
        AnswerSort.OutOfReach => $"out of reach: {AnswerWords.Result(answer, answer.Reached)} at best",
        _ => "",
    };

    private void AddRig(Declaration declaration, RigStudy rig)
    {
        if (RatingTable.Of(rig) is [{ IsKnown: true } closest, ..] ratings)
        {
            var room = QuantityWriter.WriteLike(Math.Abs(closest.Room), closest.Limit!);
            Add(0, $"{Phrase.Small(closest.Rating.Title)}: {room} {(closest.IsOver ? "over" : "left")}", () => new CardText().Paragraph(RigCard.Verdict(ratings)).Paragraph(RigCard.Caution));
        }

        if (declaration.Block.Find(RigFacts.Trailer) is { } line)
        {
            Add(line, RatioResults.TongueRatio, rig, "tongue {0}");
        }

        if (declaration.Block.All(RigFacts.Load) is [.., var load])
        {
            var isOver = RatingResults.PayloadLeft.Compute(rig) is { IsComputed: true, Value: < 0 };
            Add(load, RatingResults.PayloadLeft, rig, isOver ? "payload {0}: over" : "payload {0} left");
        }
    }

    private void AddTrip(TripStudy trip)
    {
        var units = SubjectUnits.Of(trip, view.State.Units);
        foreach (var row in TripTable.Of(trip))
        {
            var left = row.Left.IsComputed ? $"{Brief(LegResults.EnergyLeft, row.Left, units)} left{Shown.Mark(row.Left)}" : null;
            var arrival = row.Arrives?.Clock is { } clock ? Moment.WriteClock(clock) : null;
            Add(row.Leg.Leg.Opener!, string.Join(", ", new[] { arrival, left }.OfType<string>()), () => ResultCard.Short(LegResults.EnergyLeft, row.Left, units));
            if (row.Stop is { } stop && (row.LeavingWith is { IsComputed: true } || row.Leaves is not null))
            {
                var leaves = row.Leaves?.Clock is { } departs ? $"until {Moment.WriteClock(departs)}" : null;
                var with = row.LeavingWith is { IsComputed: true } leaving ? $"{Brief(StopResults.LeavingWith, leaving, units)} aboard" : null;
                Add(stop.Block.Opener!, string.Join(", ", new[] { leaves, with }.OfType<string>()), () => ResultCard.Short(StopResults.StopTime, row.StopTime!, units));
            }
        }
    }

    private void AddWeighing(WeighingStudy weighing)
    {
        foreach (var reading in weighing.Passes.SelectMany(pass => pass.Readings))
        {
            Add(reading.Lines[^1], ReadingResults.Model, reading, reading.Lines.Length > 1 ? "model {0} on both" : "model {0}");
        }
    }

    private void Add(Fact line, IResult result, ISubject subject, string phrase)
    {
        if (result.Compute(subject) is { IsComputed: true } node)
        {
            var units = SubjectUnits.Of(subject, view.State.Units);
            Add(line, string.Format(null, phrase, units.Write(result, subject, node.Value) + (node.IsEstimated ? $" {Shown.Estimated}" : "")), () => ResultCard.Short(result, node, units));
        }
    }

    private void Add(Fact line, string label, Func<CardText> tooltip)
    {
        // An inherited line stands in another declaration, and has its note there.
        if (label.Length > 0 && ReferenceEquals(line.Place.Declaration, current))
        {
            Add(line.Place.Line, label, tooltip);
        }
    }

    private void Add(int line, string label, Func<CardText> tooltip)
    {
        var position = new LinePosition(file.FirstLineOf(current!) + line, current!.Lines[line].Statement!.Span.End);
        if (position >= range.Start && position <= range.End)
        {
            notes.Add(new InlayNote(position, label.Length < Longest ? label : label[..(Longest - 2)] + "…", () => tooltip().ToString()));
        }
    }

    private static string Brief(IResult result, Node<double> node, UnitChoice units) => units.Brief(result, node.Subject, node.Value);
}

using System.Collections.Immutable;
using System.Text;
using RigLang.Editing.Locating;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;

namespace RigLang.Editing.Completing;

/// <summary>First declarations to fill in: the lines wanted for the first verdict, with places for their values and none made up.</summary>
internal static class Skeletons
{
    private const int ValueColumn = 24;

    public static string Of(DeclarationKind kind, Spot spot)
    {
        var writer = new Writer(spot);
        writer.Open(kind);
        switch (kind)
        {
            case DeclarationKind.Vehicle:
                writer.Lines(1, VehicleFacts.Wheelbase, VehicleFacts.Overhang, VehicleFacts.GrossRating, VehicleFacts.CombinedRating, VehicleFacts.TowingRating, VehicleFacts.TongueRating);
                foreach (var axle in new[] { "front", "rear" })
                {
                    writer.Block(1, $"{VehicleFacts.Axle.Keyword} {axle}");
                    writer.Lines(2, AxleFacts.Vehicle.Carries!, AxleFacts.Vehicle.AxleRating);
                }

                writer.Line(1, VehicleFacts.Aboard, "nothing");
                break;
            case DeclarationKind.Trailer:
                writer.Lines(1, TrailerFacts.Mass, TrailerFacts.Tongue, TrailerFacts.CouplingToAxle, TrailerFacts.GrossRating, TrailerFacts.Brakes);
                writer.Block(1, $"{TrailerFacts.Axle.Keyword} middle");
                writer.Lines(2, AxleFacts.Trailer.AxleRating);
                writer.Line(1, TrailerFacts.Aboard, "nothing");
                break;
            case DeclarationKind.Load:
                writer.Block(1, $"{LoadFacts.On.Keyword} vehicle");
                writer.Block(2, $"{CargoFacts.Load.Item.Keyword} driver {writer.Stop()} at {writer.Stop()} behind front-axle");
                break;
            case DeclarationKind.Rig:
                writer.Lines(1, RigFacts.Vehicle, RigFacts.Trailer, RigFacts.Load);
                break;
            case DeclarationKind.Trip:
                writer.Lines(1, TripFacts.Rig, TripFacts.Start);
                writer.Block(1, $"{TripFacts.Leg.Keyword} {writer.Stop()}");
                writer.Lines(2, LegFacts.Journey.Distance, LegFacts.Journey.Speed, LegFacts.Journey.Climb, LegFacts.Journey.Descent);
                break;
            case DeclarationKind.Weighing:
                writer.Lines(1, WeighingFacts.Rig, WeighingFacts.Date);
                writer.Block(1, $"{WeighingFacts.Pass.Keyword} {writer.Stop(["solo", "slack", "tight", "trailer", "coupled"])}");
                writer.Block(2, $"{PassFacts.Scale.Keyword} front {writer.Stop()}");
                writer.Block(2, $"{PassFacts.Scale.Keyword} rear {writer.Stop()}");
                break;
            default:
                writer.Lines(1, [.. Vocabulary.Root(kind).Facts.Where(fact => fact.Need == Need.ForVerdict && fact.Opens is null)]);
                break;
        }

        return writer.ToString();
    }

    private sealed class Writer(Spot spot)
    {
        private readonly StringBuilder text = new();
        private int stop;

        public void Open(DeclarationKind kind) => text.Append(kind.Keyword()).Append(' ').Append($"${{{++stop}:name}} \"${{{++stop}:title}}\"");

        public string Stop(IReadOnlyList<string>? choices = null) => choices is { Count: > 0 } ? $"${{{++stop}|{string.Join(',', choices)}|}}" : $"${++stop}";

        public void Block(int level, string line) => text.Append('\n').Append(' ', level * 4).Append(line);

        public void Line(int level, FactDeclaration fact, string value) => Block(level, fact.Keyword.PadRight(ValueColumn - (4 * (level - 1))) + value);

        public void Lines(int level, params FactDeclaration[] facts)
        {
            foreach (var fact in facts)
            {
                Line(level, fact, Stop(ChoicesFor(fact)));
            }
        }

        public override string ToString() => text + "\n$0";

        private ImmutableArray<string> ChoicesFor(FactDeclaration fact) => fact.Signature.Slots is not [{ Form: var form }, ..] ? [] : form switch
        {
            ChoiceForm choice => choice.Choices,
            ReferenceForm reference => [.. spot.State.Workspace.Link(spot.File.Id)?.NamesInSight(reference.Kind).Take(20) ?? []],
            _ => [],
        };
    }
}

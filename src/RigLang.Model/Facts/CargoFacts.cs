using RigLang.Model.Declaring;
using Q = RigLang.Quantities.QuantityKinds;

namespace RigLang.Model.Facts;

/// <summary>Items and tank levels, as they stand under <c>aboard</c> and in a load's <c>on</c>.</summary>
public sealed class CargoFacts
{
    public static CargoFacts AboardVehicle { get; } = new(VehicleFacts.Block.Block(VehicleFacts.Aboard));

    public static CargoFacts AboardTrailer { get; } = new(TrailerFacts.Block.Block(TrailerFacts.Aboard));

    public static CargoFacts Load { get; } = new(LoadFacts.Block.Block(LoadFacts.On));

    private CargoFacts(BlockDeclaration block)
    {
        Block = block;
        Item = block.Fact(
            "item",
            Signature.Of(
                new Slot("name", new NameForm()),
                new Slot("mass", new QuantityForm([Q.Mass, Q.Volume])),
                new Slot("fluid", new ChoiceForm(Fluids.Names), IsOptional: true),
                new Slot("place", new PositionForm(), "at"),
                new Slot("high", new QuantityForm([Q.Length]), "high", IsOptional: true),
                new Slot("left", new QuantityForm([Q.Length]), "left", IsOptional: true),
                new Slot("right", new QuantityForm([Q.Length]), "right", IsOptional: true),
                new Slot("roof", new ChoiceForm(["roof"]), "on", IsOptional: true)),
            "driver 84 kg at 1.42 m behind front-axle", "a thing or a person, with its place",
            otherwise: "where no `high` is said: as high as the mass centre of the vehicle or trailer it is in (our choice)", key: ["name"]);
        Fill = block.Fact(
            "fill",
            Signature.Of(
                new Slot("tank", new LocalNameForm(LocalNames.Tank)),
                new Slot("level", new QuantityForm([Q.Ratio, Q.Volume]))),
            "fuel 100 %", "how full a tank is", otherwise: "as under aboard", key: ["tank"]);
        if (block.Kind == DeclarationKind.Load)
        {
            // What is aboard when a vehicle is weighed is history; a load is what one packs.
            Item.Stepped(10, 11.33980925, "mass").Stepped(0.5, 0.6096, "place"); // 25 lb, 2 ft
            Fill.Stepped(0.1, 0.1, "level");
        }
    }

    public BlockDeclaration Block { get; }

    public FactDeclaration Item { get; }

    public FactDeclaration Fill { get; }

    public static CargoFacts Of(BlockDeclaration block) =>
        ReferenceEquals(block, AboardVehicle.Block) ? AboardVehicle : ReferenceEquals(block, AboardTrailer.Block) ? AboardTrailer : Load;
}

using System.Text.Json;
using System.Text.Json.Serialization;
using BrewDeck.Core.Brewhouses;
using BrewDeck.Core.Fermenting;
using BrewDeck.Core.Physics;
using BrewDeck.Core.Planning;
using BrewDeck.Core.Recipes;
using BrewDeck.Core.Rehearsing;
using BrewDeck.Core.Running;
using BrewDeck.Core.Running.Alarms;
using BrewDeck.Core.Running.Troubles;
using BrewDeck.Core.Waters;

namespace BrewDeck.Logbook;

/// <summary>
/// How events are written: snake_case, enums by name, what follows from other fields left out. Defaults are written, because
/// a changed default must not change an old record; only null is left out.
/// </summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.SnakeCaseLower,
    DictionaryKeyPolicy = JsonKnownNamingPolicy.Unspecified,
    NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    IgnoreReadOnlyProperties = true,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    Converters =
    [
        typeof(VesselStateJson),
        typeof(HopDoseJson),
        typeof(SnakeCase<VesselRoles>),
        typeof(SnakeCase<MashHeating>),
        typeof(SnakeCase<HeatMedium>),
        typeof(SnakeCase<ChillerKind>),
        typeof(SnakeCase<GristUse>),
        typeof(SnakeCase<MaltKind>),
        typeof(SnakeCase<BrewingSalt>),
        typeof(SnakeCase<AcidKind>),
        typeof(SnakeCase<HopUse>),
        typeof(SnakeCase<HopForm>),
        typeof(SnakeCase<AdditionUse>),
        typeof(SnakeCase<SpargeMethod>),
        typeof(SnakeCase<UnitProcedure>),
        typeof(SnakeCase<StepKind>),
        typeof(SnakeCase<Cautions>),
        typeof(SnakeCase<ChargeKind>),
        typeof(SnakeCase<ReadingKind>),
        typeof(SnakeCase<RemedyKind>),
        typeof(SnakeCase<MattersMost>),
        typeof(SnakeCase<AlarmKind>),
        typeof(SnakeCase<TroubleKind>),
        typeof(SnakeCase<MishapKind>),
        typeof(SnakeCase<Severity>),
        typeof(SnakeCase<HandAct>),
        typeof(SnakeCase<RehearsalMark>),
        typeof(SnakeCase<FermenterFigure>),
        typeof(SnakeCase<PackageKind>),
        typeof(SnakeCase<PrimingSugar>),
        typeof(SnakeCase<DueKind>),
    ])]
[JsonSerializable(typeof(RunEvent))]
internal sealed partial class EventJson : JsonSerializerContext;

/// <summary>Enums as snake_case names; numbers are refused, because they move when a name is put in between.</summary>
internal sealed class SnakeCase<T>() : JsonStringEnumConverter<T>(JsonNamingPolicy.SnakeCaseLower, allowIntegerValues: false)
    where T : struct, Enum;

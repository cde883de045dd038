using System.Text.Json;
using BrewDeck.Core.Waters;

namespace BrewDeck.Commands;

/// <summary>The treatment of the water in the JSON of a plan.</summary>
internal static class WaterJson
{
    /// <summary>Into an object that is open.</summary>
    public static void Write(Utf8JsonWriter json, WaterTreatment water)
    {
        json.WriteString("source", water.Supply.Source.Name);
        json.WriteString("target", water.Target.Name);
        json.Round("soft_share", water.SoftShare, 3);
        json.Round("mash_ph", water.MashPh, 3);
        json.Round("mash_ph_error", MashAcidity.ErrorBandPh, 3);
        Dose(json, "strike", water.Strike);
        if (water.Sparge is { } sparge)
            Dose(json, "sparge", sparge);
    }

    private static void Dose(Utf8JsonWriter json, string name, WaterDose dose)
    {
        json.WriteStartObject(name);
        json.Round("volume_l", dose.VolumeL, 3);
        json.Round("soft_l", dose.SoftL, 3);
        json.WriteStartObject("salts_g");
        foreach (var salt in dose.Salts)
            json.Round(SnakeName.Of(salt.Salt), salt.MassG, 3);
        json.WriteEndObject();
        if (dose.Acid is { } acid)
        {
            json.WriteString("acid", SnakeName.Of(acid.Kind));
            json.Round("acid_strength", acid.MassFraction, 4);
            json.Round("acid_ml", acid.VolumeMl, 3);
        }
        Ions(json, dose.Ions);
        json.WriteEndObject();
    }

    private static void Ions(Utf8JsonWriter json, WaterIons ions)
    {
        json.Round("calcium_mg_per_l", ions.CalciumMgPerL, 2);
        json.Round("magnesium_mg_per_l", ions.MagnesiumMgPerL, 2);
        json.Round("sodium_mg_per_l", ions.SodiumMgPerL, 2);
        json.Round("chloride_mg_per_l", ions.ChlorideMgPerL, 2);
        json.Round("sulphate_mg_per_l", ions.SulphateMgPerL, 2);
        json.Round("alkalinity_as_caco3_mg_per_l", ions.AlkalinityAsCaCO3, 2);
        json.Round("residual_alkalinity_as_caco3_mg_per_l", ions.ResidualAlkalinityAsCaCO3, 2);
    }
}

namespace Pattern.Core.Patterns;

/// <summary>Whether a waistband is cut in one or joined.</summary>
public enum WaistbandJoin
{
    /// <summary>In one, from end to end: nothing to sew, but long on cloth and paper.</summary>
    None,

    /// <summary>In three parts joined over the side seams of the skirt, or the seams nearest to the sides, where a join does not show and the waist can be let out: they lie on short cloth and small paper.</summary>
    SideSeams,
}

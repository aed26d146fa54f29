namespace Pattern.Core.Geometry;

/// <summary>Finds which equations contradict each other, where not all can hold.</summary>
internal static class Conflict
{
    /// <summary>Leaves asked only equations of which all but any one can hold: the deletion filter.</summary>
    /// <remarks>As many searches as there are equations: each is left out in turn, and stays out where the others still contradict each other without it. Afterwards what was
    /// found is the compromise between those that are left.</remarks>
    internal static void Isolate(LeastChange room, ILeastChangeProblem problem)
    {
        room.OnlyVerdict = true;
        for (int i = 0; i < room.Asked.Length; i++)
        {
            if (room.Asked[i])
            {
                room.Asked[i] = false;
                room.Asked[i] = room.Solve(problem) != LeastChangeEnd.NotMet;
            }
        }

        room.OnlyVerdict = false;
        room.Solve(problem);
    }
}

using System.Threading;

namespace Pattern.Core.Panels;

/// <summary>Keeps the room that a plan was laid out in, so that the next body uses it again.</summary>
internal sealed class TruingLayouts
{
    private TruingRoom? _free;

    /// <summary>A room that fits the panels, bound to them: the one that is kept, or a new one.</summary>
    internal TruingRoom Rent(Movable[] movables, Condition[] conditions, Panel[] panels)
    {
        TruingRoom? room = Interlocked.Exchange(ref _free, null);
        if (room is null || !room.TryBind(movables, conditions, panels))
        {
            room = new TruingRoom(new TruingLayout(movables, conditions, panels));
            room.TryBind(movables, conditions, panels);
        }

        return room;
    }

    internal void Return(TruingRoom room) => Volatile.Write(ref _free, room);
}

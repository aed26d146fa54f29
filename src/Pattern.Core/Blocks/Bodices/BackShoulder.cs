namespace Pattern.Core.Blocks;

/// <summary>How the back shoulder is shaped over the shoulder blade.</summary>
public enum BackShoulder
{
    /// <summary>By a dart, a twelfth of the shoulder wide, that points at the shoulder blade.</summary>
    Dart,

    /// <summary>By easing: the back shoulder is half as much longer than the front one, and is eased in.</summary>
    Eased,
}

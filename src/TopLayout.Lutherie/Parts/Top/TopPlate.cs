using TopLayout.Lutherie.Woods;

namespace TopLayout.Lutherie.Parts;

/// <summary>The top as a plate: its wood, how thick it is, how it is sawn (<see cref="Sawing.Unknown"/> is taken as quartersawn, as tops are).</summary>
/// <param name="Wood">Its wood.</param>
/// <param name="ThicknessMm">Thickness, mm, &gt; 0.</param>
/// <param name="Sawing">How it is sawn.</param>
public sealed record TopPlate(Wood Wood, double ThicknessMm, Sawing Sawing = Sawing.Quarter);

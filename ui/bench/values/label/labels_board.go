package label

// The labels of what the full-size drawing alone goes by.

var boardLabels = map[string]Label{
	"width_mm":  {Says: "width", Does: "How wide the board is, along the trunk", First: 2400},
	"height_mm": {Says: "height", Does: "How high the board is, across the trunk", First: 1200},
	"peg_mm":    {Says: "peg", Does: "Diameter of the pegs that hold the bundles", Left: is(6.0, "unless you say"), Step: 0.5},
	"datum":     {Says: "datum", Does: "The place that x and y of the pegs are measured from", From: places},
}

var viaLabels = map[string]Label{
	"at_mm":     {Says: "at", Does: "From the first end of the branch to the middle of the bend", Step: 5},
	"turn_deg":  {Says: "turns", Does: "How far it turns: + to the left, - to the right, seen from above", First: 90, Step: 5},
	"radius_mm": {Says: "radius", Does: "Of the centre line in this bend", First: 60, Step: 5},
}

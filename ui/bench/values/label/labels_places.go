package label

// The labels of places, wires and what they are put together to.

var terminationLabels = map[string]Label{
	"id": {Says: "id", Does: "Wires name it by this, so it is short: P1, INJ1"},
	"name": {Says: "name", Does: "What people call it", From: names("bulkhead", "engine side", "ECU", "sensor", "injector", "coil",
		"pump")},
	"device":     {Says: "fitted to", Does: "The device that it plugs into", From: names("bulkhead plate", "ECU", "engine", "chassis")},
	"insert":     {Says: "insert", Does: "Its arrangement of cavities, from the catalogue", From: inserts},
	"gender":     {Says: "gender", Does: "What contacts it has"},
	"key":        {Says: "key", Does: "Its keying, as the maker letters it", From: names("N", "A", "B", "C", "D", "E")},
	"mount":      {Says: "mount", Does: "How it is held"},
	"datum":      {Says: "length from", Does: "Where the length of its branch starts. The length is converted where the parts are known"},
	"part_mm":    {Says: "length of the part", Does: "From its mating face to the rear of its shell", First: 30},
	"clock":      {Says: "key points to", Unit: "o'clock", Does: "Hours, seen from the wire side", Round: true, First: 12},
	"boot":       {Says: "boot", Does: "The moulded boot on it", From: boots},
	"boot_clock": {Says: "boot points to", Unit: "o'clock", Does: "Hours, seen from the wire side", Round: true, First: 12},
	"reserved":   {Says: "reserved cavities", Item: "cavity", Does: "Cavities that stay empty", From: cavities},
	"loop_mm":    {Says: "loop in the boot", Does: "Wire kept in its boot, to make a contact again", Left: loopLeft},
	"space_mm":   {Says: "free length behind", Does: "Room behind it for the boot and the first bend", First: 100},
	"limit_c":    {Says: "device withstands", Does: "The highest temperature the device is made for", First: 125, Step: 5},
	"cavities": {Says: "own cavities", Item: "cavity", Does: "Their names, where it has no insert of the catalogue", Order: true,
		Left: cavitiesLeft},
	"contacts": {Says: "contacts by size", Item: "cavity", Does: "Which cavities take which size of contact", From: contactSizes,
		Items: cavities},
	"seal_mm": {Says: "wire the seal fits", Pair: [2]string{"smallest wire", "largest wire"},
		Does: "Smallest and largest wire that its seal takes", First: 1},
	"aliases":  {Says: "other names", Item: "name", Does: "What else its cavities are called", From: cavities},
	"firewall": {Says: "firewall", Does: "In a firewall each unwired cavity takes contact, plug and a stub of wire", Left: is(false, "")},
	"tight":    {Says: "in a tight wall", Does: "It must be tight: a tank, a sealed bulkhead", Left: is(false, "")},
}

var breakoutLabels = map[string]Label{
	"id": {Says: "id", Does: "Branches name it by this, so it is short: J1"},
	"name": {Says: "name", Does: "What people call it",
		From: names("rail breakout", "front breakout", "rear breakout", "sensor breakout")},
	"transition": {Says: "transition", Does: "The moulded part that closes it", From: transitions},
	"build":      {Says: "closed", Does: "How it is closed where it has no transition"},
	"zone_mm":    {Says: "sorted zone", Does: "How far wires run straight and sorted here", Left: zoneLeft},
}

var spliceLabels = map[string]Label{
	"id":        {Says: "id", Does: "Wires name it by this: S1"},
	"at":        {Says: "at", Does: "The breakout that it is at", From: breakouts},
	"toward":    {Says: "lies toward", Does: "Which branch of its breakout the sleeve lies along", From: meeting},
	"offset_mm": {Says: "middle", Does: "How far along that branch the middle of its sleeve is", Left: is(0.0, ""), Step: 5},
	"part":      {Says: "part", Does: "The barrel or stub that joins it", From: spliceParts, Left: spliceLeft},
}

var wireLabels = map[string]Label{
	"id":     {Says: "id", Does: "Its number, on its flags and in every list"},
	"signal": {Says: "signal", Does: "What it carries, in words"},
	"from":   {Says: "from", Does: "The cavity or splice that it starts in", From: ends, Taken: true},
	"to":     {Says: "to", Does: "The cavity or splice that it ends in", From: ends, Taken: true},
	"spec":   {Says: "spec", Does: "Its specification", From: specs},
	"size":   {Says: "size", Does: "Its conductor", From: sizes},
	"colour": {Says: "colour", Does: "0 black 1 brown 2 red 3 orange 4 yellow 5 green 6 blue 7 violet 8 grey 9 white",
		From: colours},
	"shade":           {Says: "shade", Does: "Light or dark, where the colour alone does not say it: light blue"},
	"amps":            {Says: "current", Does: "What it carries while it is on", First: 1},
	"on_s":            {Says: "on for", Does: "How long it is on at a time; left out, it is always on", First: 1},
	"period_s":        {Says: "in every", Does: "From one start to the next", First: 2},
	"rest_a":          {Says: "in between", Does: "What it carries the rest of the time", Left: is(0.0, ""), First: 0.1},
	"role":            {Says: "role", Does: "What it does. A spare carries nothing yet"},
	"safety":          {Says: "safety-critical", Does: "Life depends on it: this sheet then gives no rating for it", Left: is(false, "")},
	"return":          {Says: "return", Does: "The wire that brings its current back, where it is in this harness", From: otherWires},
	"capped_at":       {Says: "capped at", Does: "Of a spare with one end: where the other is capped", From: places},
	"fold_mm":         {Says: "folded back", Does: "How much of it is folded back where it is capped", Left: foldLeft},
	"measured_drop_v": {Says: "drop", Does: "Measured from end to end, at its current", First: 0.1, Step: 0.01},
	"note":            {Says: "note", Does: "Anything the next person has to know"},
}

var feedLabels = map[string]Label{
	"id":        {Says: "id", Does: "Its number, as on the fuse box"},
	"name":      {Says: "name", Does: "What it feeds", From: names("injectors", "coils", "fuel pump", "fan", "ECU", "lights", "sensors")},
	"device":    {Says: "device", Does: "Blade fuse, large blade fuse, electronic limit"},
	"amps":      {Says: "rating", Does: "The rating of the fuse, or the limit it is set to", First: 5},
	"outputs":   {Says: "outputs", Does: "How many outputs are joined to one load", Left: is(int64(1), "")},
	"trip_s":    {Says: "opens within", Does: "How fast it opens a short, from its maker's sheet", First: 0.1},
	"before_mm": {Says: "wire before", Does: "Unprotected wire between the supply and the fuse", First: 100},
	"wires":     {Says: "wires", Item: "wire", Does: "The wires that come out of it", From: allWires},
}

var unitLabels = map[string]Label{
	"id": {Says: "id", Does: "Layers name it by this: C1"},
	"name": {Says: "name", Does: "What people call it",
		From: names("crank sensor", "cam sensor", "knock sensor", "CAN bus", "wheel speed")},
	"wires":  {Says: "wires", Item: "wire", Does: "The wires that it is made of", From: allWires},
	"build":  {Says: "made as", Does: "A pair, a triple or a quad"},
	"shield": {Says: "shield", Does: "It has a shield round it", Left: is(false, "")},
	"drain_from": {Says: "drain, from end", Does: "Where its shield is grounded at its from end; cut is nowhere", From: drains,
		Taken: true},
	"drain_to": {Says: "drain, to end", Does: "Where its shield is grounded at its to end; cut is nowhere", From: drains, Taken: true},
	"strip_mm": {Says: "shield ends before", Does: "How far before the contacts the shield ends", First: 40},
	"drain_mm": {Says: "drain lead", Does: "How long the lead is that takes the shield to ground", First: 60},
	"over_mm":  {Says: "OD", Does: "Measured, or from its maker", Left: unitOver, Step: 0.01},
	"kbit_s":   {Says: "bit rate", Unit: "kbit/s", Does: "Of the bus that it carries", First: 500, Step: 125},
}

var branchLabels = map[string]Label{
	"id":              {Says: "id", Does: "Its short name: T1, L4"},
	"name":            {Says: "name", Does: "What people call it", From: names("trunk", "rail", "leg", "front leg", "rear leg")},
	"from":            {Says: "from", Does: "The place that it is measured from", From: places},
	"to":              {Says: "to", Does: "The place that it runs to", From: places},
	"length_mm":       {Says: "length", Does: "Along its centre line, from datum to datum", Step: 5},
	"tolerance_mm":    {Says: "tolerance", Pair: [2]string{"shorter by", "longer by"}, Does: "How much shorter and longer it may be"},
	"bend_mm":         {Says: "bend radius", Does: "Inside radius of its tightest bend", First: 40},
	"bend_deg":        {Says: "bend", Does: "How far it turns there", First: 90, Step: 15},
	"leaves_deg":      {Says: "leaves at", Does: "Turn of the drawing into this branch: + left, - right, 0 straight on", Step: 5},
	"environment":     {Says: "runs through", Item: "condition", Does: "What it has to withstand on its way"},
	"supported":       {Says: "supported", Does: "It is clipped along its way", Left: is(false, "")},
	"ambient_c":       {Says: "air round it", Does: "How warm the air round this branch is", Left: ambientLeft, Step: 5},
	"make":            {Says: "made", Does: "Laid in layers, twisted together or straight", Left: makeLeft},
	"outer":           {Says: "outermost layer", Does: "Which way its outermost layer turns", Left: outerLeft},
	"leavers_outside": {Says: "leavers outside", Does: "Preferred: what leaves first lies outside what runs on", Left: is(true, "")},
	"units_inside":    {Says: "units in centre", Does: "Preferred: made-up units lie in the middle", Left: is(true, "")},
	"data_apart":      {Says: "data apart", Does: "Preferred: trigger and data do not lie beside power", Left: is(false, "")},
}

var layerLabels = map[string]Label{
	"of":        {Says: "pieces", Item: "piece", Does: "The wires and units in it", From: pieces},
	"fillers":   {Says: "fillers", Does: "How many pieces only keep it round", Left: is(int64(0), "")},
	"filler_mm": {Says: "filler OD", Does: "How thick its fillers are", First: 1.1, Step: 0.01},
	"bind_mm": {Says: "binder", Does: "What tape or thread adds to its diameter. Round the centre it builds it up", Left: is(0.0, ""),
		Step: 0.05},
	"bind_part": {Says: "tape", Does: "Which tape or thread it is"},
	"lay_mm":    {Says: "lay length", Does: "One turn along the bundle. 0 goes by the rules of the shop", Left: layLeft, Step: 5},
	"pinned":    {Says: "pinned", Item: "piece", Does: "Pieces that stay in this layer", From: pieces},
	"locked":    {Says: "locked", Does: "Lock a layer that is cut or tied: then no option and no move changes it", Left: is(false, "")},
}

var coverLabels = map[string]Label{
	"what":     {Says: "kind", Does: "Tape, braid, sleeve or sheath"},
	"part":     {Says: "part", Does: "The tube, braid or tape", From: tubes},
	"from_mm":  {Says: "start", Does: "Measured from the first end of the branch", Left: coverFrom, Step: 5},
	"to_mm":    {Says: "stop", Does: "Measured from the first end of the branch", Left: coverTo, Step: 5},
	"thick_mm": {Says: "adds", Does: "What it adds on each side, measured", Left: coverThick, Step: 0.01},
}

var asBuiltLabels = map[string]Label{
	"layer":   {Says: "layer", Does: "Which layer; 0 is the centre"},
	"over_mm": {Says: "OD", Item: "reading", Does: "What the callipers read, one after another", Order: true},
}

var asideLabels = map[string]Label{
	"name":   {Says: "name", Does: "What you call this variant", From: names("wide centre", "fewer fillers", "more spares")},
	"letter": {Says: "letter", Does: "It stands under this letter beside the branch as it is", Left: letterLeft},
	"make":   {Says: "made", Does: "Laid in layers, twisted together or straight"},
	"outer":  {Says: "outermost layer", Does: "Which way its outermost layer turns"},
	"spec":   {Says: "spec", Does: "Of every wire that runs in the branch", From: specs},
	"sizes": {Says: "sizes", Item: "size then", Does: "Each size that changes, and the size it is then", From: sizesHere,
		Items: sizes},
	"spares": {Says: "spare wires", Does: "How many run in the branch", First: 2},
}

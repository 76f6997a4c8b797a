package values

// The labels of places, wires and what they are put together to.

var terminationLabels = map[string]label{
	"id": {says: "id", does: "Wires name it by this, so it is short: P1, INJ1"},
	"name": {says: "name", does: "What people call it", from: names("bulkhead", "engine side", "ECU", "sensor", "injector", "coil",
		"pump")},
	"device":     {says: "fitted to", does: "The device that it plugs into", from: names("bulkhead plate", "ECU", "engine", "chassis")},
	"insert":     {says: "insert", does: "Its arrangement of cavities, from the catalogue", from: inserts},
	"gender":     {says: "gender", does: "What contacts it has"},
	"key":        {says: "key", does: "Its keying, as the maker letters it", from: names("N", "A", "B", "C", "D", "E")},
	"mount":      {says: "mount", does: "How it is held"},
	"datum":      {says: "length from", does: "Where the length of its branch starts. Its termination page converts the length"},
	"part_mm":    {says: "length of the part", does: "From its mating face to the rear of its shell", first: 30},
	"clock":      {says: "key points to", unit: "o'clock", does: "Hours, seen from the wire side", round: true, first: 12},
	"boot":       {says: "boot", does: "The moulded boot on it", from: boots},
	"boot_clock": {says: "boot points to", unit: "o'clock", does: "Hours, seen from the wire side", round: true, first: 12},
	"reserved":   {says: "reserved cavities", item: "cavity", does: "Cavities that stay empty", from: cavities},
	"loop_mm":    {says: "loop in the boot", does: "Wire kept in its boot, to make a contact again", left: loopLeft},
	"space_mm":   {says: "free length behind", does: "Room behind it for the boot and the first bend", first: 100},
	"limit_c":    {says: "device withstands", does: "The highest temperature the device is made for", first: 125, step: 5},
	"cavities": {says: "own cavities", item: "cavity", does: "Their names, where it has no insert of the catalogue", order: true,
		left: cavitiesLeft},
	"contacts": {says: "contacts by size", item: "cavity", does: "Which cavities take which size of contact", from: contactSizes,
		items: cavities},
	"seal_mm": {says: "wire the seal fits", pair: [2]string{"smallest wire", "largest wire"},
		does: "Smallest and largest wire that its seal takes", first: 1},
	"aliases":  {says: "other names", item: "name", does: "What else its cavities are called", from: cavities},
	"firewall": {says: "firewall", does: "In a firewall each unwired cavity takes contact, plug and a stub of wire", left: is(false, "")},
	"tight":    {says: "in a tight wall", does: "It must be tight: a tank, a sealed bulkhead", left: is(false, "")},
}

var breakoutLabels = map[string]label{
	"id": {says: "id", does: "Branches name it by this, so it is short: J1"},
	"name": {says: "name", does: "What people call it",
		from: names("rail breakout", "front breakout", "rear breakout", "sensor breakout")},
	"transition": {says: "transition", does: "The moulded part that closes it", from: transitions},
	"build":      {says: "closed", does: "How it is closed where it has no transition"},
	"zone_mm":    {says: "sorted zone", does: "How far wires run straight and sorted here", left: zoneLeft},
}

var spliceLabels = map[string]label{
	"id":        {says: "id", does: "Wires name it by this: S1"},
	"at":        {says: "at", does: "The breakout that it is at", from: breakouts},
	"toward":    {says: "lies toward", does: "Which branch of its breakout the sleeve lies along", from: meeting},
	"offset_mm": {says: "middle", does: "How far along that branch the middle of its sleeve is", left: is(0.0, ""), step: 5},
	"part":      {says: "part", does: "The barrel or stub that joins it", from: spliceParts, left: spliceLeft},
}

var wireLabels = map[string]label{
	"id":     {says: "id", does: "Its number, on its flags and in every list"},
	"signal": {says: "signal", does: "What it carries, in words"},
	"from":   {says: "from", does: "The cavity or splice that it starts in", from: ends, taken: true},
	"to":     {says: "to", does: "The cavity or splice that it ends in", from: ends, taken: true},
	"spec":   {says: "spec", does: "Its specification", from: specs},
	"size":   {says: "size", does: "Its conductor", from: sizes},
	"colour": {says: "colour", does: "0 black 1 brown 2 red 3 orange 4 yellow 5 green 6 blue 7 violet 8 grey 9 white",
		from: colours},
	"amps":            {says: "current", does: "What it carries while it is on", first: 1},
	"on_s":            {says: "on for", does: "How long it is on at a time; left out, it is always on", first: 1},
	"period_s":        {says: "in every", does: "From one start to the next", first: 2},
	"rest_a":          {says: "in between", does: "What it carries the rest of the time", left: is(0.0, ""), first: 0.1},
	"role":            {says: "role", does: "What it does. A spare carries nothing yet"},
	"safety":          {says: "safety-critical", does: "Life depends on it: this sheet then gives no rating for it", left: is(false, "")},
	"return":          {says: "return", does: "The wire that brings its current back, where it is in this harness", from: otherWires},
	"capped_at":       {says: "capped at", does: "Of a spare with one end: where the other is capped", from: places},
	"fold_mm":         {says: "folded back", does: "How much of it is folded back where it is capped", left: foldLeft},
	"measured_drop_v": {says: "drop", does: "Measured from end to end, at its current", first: 0.1, step: 0.01},
	"note":            {says: "note", does: "Anything the next person has to know"},
}

var feedLabels = map[string]label{
	"id":        {says: "id", does: "Its number, as on the fuse box"},
	"name":      {says: "name", does: "What it feeds", from: names("injectors", "coils", "fuel pump", "fan", "ECU", "lights", "sensors")},
	"device":    {says: "device", does: "Blade fuse, large blade fuse, electronic limit"},
	"amps":      {says: "rating", does: "The rating of the fuse, or the limit it is set to", first: 5},
	"outputs":   {says: "outputs", does: "How many outputs are joined to one load", left: is(int64(1), "")},
	"trip_s":    {says: "opens within", does: "How fast it opens a short, from its maker's sheet", first: 0.1},
	"before_mm": {says: "wire before", does: "Unprotected wire between the supply and the fuse", first: 100},
	"wires":     {says: "wires", item: "wire", does: "The wires that come out of it", from: allWires},
}

var unitLabels = map[string]label{
	"id": {says: "id", does: "Layers name it by this: C1"},
	"name": {says: "name", does: "What people call it",
		from: names("crank sensor", "cam sensor", "knock sensor", "CAN bus", "wheel speed")},
	"wires":  {says: "wires", item: "wire", does: "The wires that it is made of", from: allWires},
	"build":  {says: "made as", does: "A pair, a triple or a quad"},
	"shield": {says: "shield", does: "It has a shield round it", left: is(false, "")},
	"drain_from": {says: "drain, from end", does: "Where its shield is grounded at its from end; cut is nowhere", from: drains,
		taken: true},
	"drain_to": {says: "drain, to end", does: "Where its shield is grounded at its to end; cut is nowhere", from: drains, taken: true},
	"strip_mm": {says: "shield ends before", does: "How far before the contacts the shield ends", first: 40},
	"drain_mm": {says: "drain lead", does: "How long the lead is that takes the shield to ground", first: 60},
	"over_mm":  {says: "OD", does: "Measured, or from its maker", left: unitOver, step: 0.01},
	"kbit_s":   {says: "bit rate", unit: "kbit/s", does: "Of the bus that it carries", first: 500, step: 125},
}

var branchLabels = map[string]label{
	"id":              {says: "id", does: "Its short name: T1, L4"},
	"name":            {says: "name", does: "What people call it", from: names("trunk", "rail", "leg", "front leg", "rear leg")},
	"from":            {says: "from", does: "The place that it is measured from", from: places},
	"to":              {says: "to", does: "The place that it runs to", from: places},
	"length_mm":       {says: "length", does: "Along its centre line, from datum to datum", step: 5},
	"tolerance_mm":    {says: "tolerance", pair: [2]string{"shorter by", "longer by"}, does: "How much shorter and longer it may be"},
	"bend_mm":         {says: "bend radius", does: "Inside radius of its tightest bend", first: 40},
	"bend_deg":        {says: "bend", does: "How far it turns there", first: 90, step: 15},
	"environment":     {says: "runs through", item: "condition", does: "What it has to withstand on its way"},
	"supported":       {says: "supported", does: "It is clipped along its way", left: is(false, "")},
	"ambient_c":       {says: "air round it", does: "How warm the air round this branch is", left: ambientLeft, step: 5},
	"make":            {says: "made", does: "Laid in layers, twisted together or straight", left: makeLeft},
	"outer":           {says: "outermost layer", does: "Which way its outermost layer turns", left: outerLeft},
	"leavers_outside": {says: "leavers outside", does: "Preferred: what leaves first lies outside what runs on", left: is(true, "")},
	"units_inside":    {says: "units in centre", does: "Preferred: made-up units lie in the middle", left: is(true, "")},
	"data_apart":      {says: "data apart", does: "Preferred: trigger and data do not lie beside power", left: is(false, "")},
}

var layerLabels = map[string]label{
	"of":        {says: "pieces", item: "piece", does: "The wires and units in it", from: pieces},
	"fillers":   {says: "fillers", does: "How many pieces only keep it round", left: is(int64(0), "")},
	"filler_mm": {says: "filler OD", does: "How thick its fillers are", first: 1.1, step: 0.01},
	"bind_mm": {says: "binder", does: "What tape or thread adds to its diameter. Round the centre it builds it up", left: is(0.0, ""),
		step: 0.05},
	"bind_part": {says: "tape", does: "Which tape or thread it is"},
	"lay_mm":    {says: "lay length", does: "One turn along the bundle. 0 goes by the rules of the shop", left: layLeft, step: 5},
	"pinned":    {says: "pinned", item: "piece", does: "Pieces that stay in this layer", from: pieces},
	"locked":    {says: "locked", does: "Lock a layer that is cut or tied: then no option and no move changes it", left: is(false, "")},
}

var coverLabels = map[string]label{
	"what":     {says: "kind", does: "Tape, braid, sleeve or sheath"},
	"part":     {says: "part", does: "The tube, braid or tape", from: tubes},
	"from_mm":  {says: "start", does: "Measured from the first end of the branch", left: coverFrom, step: 5},
	"to_mm":    {says: "stop", does: "Measured from the first end of the branch", left: coverTo, step: 5},
	"thick_mm": {says: "adds", does: "What it adds on each side, measured", left: coverThick, step: 0.01},
}

var asBuiltLabels = map[string]label{
	"layer":   {says: "layer", does: "Which layer; 0 is the centre"},
	"over_mm": {says: "OD", item: "reading", does: "What the callipers read, one after another", order: true},
}

var asideLabels = map[string]label{
	"name":  {says: "name", does: "What you call this lay-up", from: names("wide centre", "fewer fillers", "more spares")},
	"make":  {says: "made", does: "Laid in layers, twisted together or straight"},
	"outer": {says: "outermost layer", does: "Which way its outermost layer turns"},
}

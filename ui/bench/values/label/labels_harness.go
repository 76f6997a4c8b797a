package label

// The labels of what a harness is as a whole.

var headLabels = map[string]Label{
	"name":     {Says: "name", Does: "What the harness is called, at the head of every sheet"},
	"number":   {Says: "number", Does: "Its drawing or part number"},
	"revision": {Says: "revision", Does: "Raise it when what is built changes", From: letters},
	"supply_v": {Says: "supply", Does: "The voltage at the battery while it is charged", First: 14, Step: 0.1},
	"short_a":  {Says: "short at the fuses", Does: "What the supply drives into a dead short there", First: 1000, Step: 50},
	"use": {Says: "used in", Does: "An aircraft harness is laid out here, and rated by its own rules elsewhere",
		Left: is("vehicle", "unless you say")},
	"units":       {Says: "units on screen", Does: "What the screen shows. The file stays in mm", Left: is("mm", "unless you say")},
	"listed_from": {Says: "independent list", Does: "The list that the nets to check against were read from"},
	"mock_up":     {Says: "lengths measured by", Does: "Who measured the lengths, with what, and when"},
	"note":        {Says: "note", Does: "Anything the next person has to know"},
}

var rulesLabels = map[string]Label{
	"lay_ratio": {Says: "lay length / OD", Does: "One turn in diameters of its layer. Longer saves wire, shorter bends better",
		Left: byRule, Step: 0.5},
	"lift_max": {Says: "closes easily up to", Does: "How proud a layer may be, as a share of a piece, and still close easily",
		Left: byRule},
	"lift_tight":    {Says: "tight up to", Does: "How proud it may be, as a share of a piece, and still close", Left: byRule},
	"lift_stop":     {Says: "too many from", Does: "From here, as a share of a piece, a layer has a piece too many", Left: byRule},
	"gap_inner":     {Says: "open, inner layer", Does: "How much of an inner layer may be open, as a share", Left: byRule},
	"gap_outer":     {Says: "open, outer layer", Does: "How much of the outermost layer may be open, as a share", Left: byRule},
	"lumpy_at":      {Says: "lumpy from", Does: "Thickest over thinnest piece of one layer, from where it is lumpy", Left: byRule},
	"filler_weight": {Says: "cost of a filler", Does: "What a filler costs a lay-up, for each mm of its diameter", Left: byRule},
	"spare_gain":    {Says: "worth of a spare", Does: "What a spare is worth to a lay-up, for each mm of its diameter", Left: byRule},
	"spares_wanted": {Says: "spares wanted", Does: "How many spares each branch should carry", Left: byRule},
	"laid_from":     {Says: "laid from", Unit: "pieces", Does: "From so many pieces a branch is laid in layers", Left: byRule},
	"leaver_weight": {Says: "cost of a buried wire", Does: "What a wire that leaves early costs a lay-up when others cover it",
		Left: byRule},
	"zone_mm":        {Says: "sorted zone", Does: "How far wires run straight and sorted at a breakout", Left: byRule},
	"zone_lump":      {Says: "zone swells by", Does: "How many times as thick the bundle is in the sorted zone", Left: byRule},
	"cut_step_mm":    {Says: "cut to steps of", Does: "Cut lengths are rounded up to this", Left: byRule},
	"tail_first_mm":  {Says: "tail, first end", Does: "What is cut off after pinning at the first end", Left: byRule},
	"tail_second_mm": {Says: "tail, other end", Does: "What is cut off after pinning at the other end", Left: byRule},
	"loop_mm":        {Says: "loop in the boot", Does: "Wire kept in each boot, to make a contact again", Left: byRule},
	"bundle_margin":  {Says: "share of the current", Does: "How much of the current that heat allows may be used", Left: byRule},
	"ambient_c":      {Says: "air round it", Does: "How warm the air round the harness is", Left: byRule},
	"altitude_m":     {Says: "height above sea", Does: "Thin air cools less", Left: byRule, Step: 100},
	"drop_max_v":     {Says: "drop, always on", Does: "Most voltage that a circuit may lose that is always on", Left: byRule, Step: 0.05},
	"drop_short_v": {Says: "drop, now and then", Does: "Most voltage that a circuit may lose that comes and goes", Left: byRule,
		Step: 0.05},
	"feed_load_max":   {Says: "load on a fuse", Does: "How much of its rating a fuse may carry, as a share", Left: byRule},
	"before_max_mm":   {Says: "wire before a fuse", Does: "Longest wire from the supply to its fuse", Left: byRule},
	"size_min":        {Says: "thinnest wire", Does: "The thinnest conductor that this shop handles", From: allSizes, Left: byRule},
	"outer":           {Says: "outermost layer", Does: "Which way the outermost layer turns", Left: byRule},
	"spec":            {Says: "usual wire", Does: "The specification that new wires get", From: specs, Left: byRule},
	"colour_stock":    {Says: "colours in stock", Item: "colour", Does: "The colours of wire that this shop keeps", From: colours},
	"filler_stock_mm": {Says: "filler in stock", Item: "diameter", Does: "Diameters of filler that this shop keeps"},
	"filler_c":        {Says: "filler withstands", Does: "From the sheet of the filler", First: 100, Step: 5},
	"filler_of":       {Says: "filler is of", Does: "What the filler in stock is made of"},
	"tape_mm":         {Says: "tape is thick", Does: "Thickness of the tape that binds and builds up", Left: byRule, Step: 0.01},
	"tape_width_mm":   {Says: "tape is wide", Does: "Width of the tape that binds and builds up", Left: byRule},
	"adhesive_c":      {Says: "adhesive withstands", Does: "From the sheet of the adhesive", First: 100, Step: 5},
	"adhesive":        {Says: "adhesive", Does: "What seals boots and transitions"},
	"pot_life_min":    {Says: "pot life", Unit: "min", Does: "Minutes from mixing the adhesive to its setting", First: 30},
	"pack_joints":     {Says: "joints from a pack", Does: "How many joints one pack of adhesive does", Left: byRule},
}

var reelLabels = map[string]Label{
	"spec":    {Says: "spec", Does: "Specification on the label of the reel", From: specs},
	"size":    {Says: "size", Does: "Size on the label of the reel", From: sizes},
	"over_mm": {Says: "measured OD", Does: "Ten side by side, divided by ten", Step: 0.01},
	"shelf_m": {Says: "on the shelf", Does: "How much of it there is", First: 100, Step: 10},
}

var partLabels = map[string]Label{
	"id":                 {Says: "part", Does: "The tube or boot in hand, as the catalogue names it", From: tubesAndBoots},
	"wall_mm":            {Says: "wall, recovered", Does: "Of a tube: its wall once shrunk", First: 1, Step: 0.01},
	"lip_recovered_mm":   {Says: "connector, recovered", Does: "Of a boot: its bore at the connector, recovered", First: 20},
	"lip_supplied_mm":    {Says: "connector, supplied", Does: "Of a boot: its bore at the connector, as supplied", First: 30},
	"cable_recovered_mm": {Says: "cable, recovered", Does: "Of a boot: its bore at the cable, recovered", First: 8},
	"cable_supplied_mm":  {Says: "cable, supplied", Does: "Of a boot: its bore at the cable, as supplied", First: 30},
	"length_mm":          {Says: "length, recovered", Does: "How long it is once shrunk", First: 60},
	"supplied_mm":        {Says: "length as supplied", Does: "For the bill alone: no maker holds to it", First: 60},
}

var listedLabels = map[string]Label{
	"signal": {Says: "signal", Does: "What the list calls this net"},
	"ends":   {Says: "ends", Item: "cavity", Does: "The cavities that the list joins", From: cavityEnds},
}

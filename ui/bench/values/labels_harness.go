package values

// The labels of what a harness is as a whole.

var headLabels = map[string]label{
	"name":     {says: "name", does: "What the harness is called, at the head of every sheet"},
	"number":   {says: "number", does: "Its drawing or part number"},
	"revision": {says: "revision", does: "Raise it when what is built changes", from: letters},
	"supply_v": {says: "supply", does: "The voltage at the battery while it is charged", first: 14, step: 0.1},
	"short_a":  {says: "short at the fuses", does: "What the supply drives into a dead short there", first: 1000, step: 50},
	"use": {says: "used in", does: "An aircraft harness is laid out here, and rated by its own rules elsewhere",
		left: is("vehicle", "unless you say")},
	"units":       {says: "units on screen", does: "What the screen shows. The file stays in mm", left: is("mm", "unless you say")},
	"listed_from": {says: "independent list", does: "The list that the nets to check against were read from"},
	"mock_up":     {says: "lengths measured by", does: "Who measured the lengths, with what, and when"},
	"note":        {says: "note", does: "Anything the next person has to know"},
}

var rulesLabels = map[string]label{
	"lay_ratio": {says: "lay length / OD", does: "One turn in diameters of its layer. Longer saves wire, shorter bends better",
		left: byRule, step: 0.5},
	"lift_max": {says: "closes easily up to", does: "How proud a layer may be, as a share of a piece, and still close easily",
		left: byRule},
	"lift_tight":    {says: "tight up to", does: "How proud it may be, as a share of a piece, and still close", left: byRule},
	"lift_stop":     {says: "too many from", does: "From here, as a share of a piece, a layer has a piece too many", left: byRule},
	"gap_inner":     {says: "open, inner layer", does: "How much of an inner layer may be open, as a share", left: byRule},
	"gap_outer":     {says: "open, outer layer", does: "How much of the outermost layer may be open, as a share", left: byRule},
	"lumpy_at":      {says: "lumpy from", does: "Thickest over thinnest piece of one layer, from where it is lumpy", left: byRule},
	"filler_weight": {says: "cost of a filler", does: "What a filler costs a lay-up, for each mm of its diameter", left: byRule},
	"spare_gain":    {says: "worth of a spare", does: "What a spare is worth to a lay-up, for each mm of its diameter", left: byRule},
	"spares_wanted": {says: "spares wanted", does: "How many spares each branch should carry", left: byRule},
	"laid_from":     {says: "laid from", unit: "pieces", does: "From so many pieces a branch is laid in layers", left: byRule},
	"leaver_weight": {says: "cost of a buried wire", does: "What a wire that leaves early costs a lay-up when others cover it",
		left: byRule},
	"zone_mm":        {says: "sorted zone", does: "How far wires run straight and sorted at a breakout", left: byRule},
	"zone_lump":      {says: "zone swells by", does: "How many times as thick the bundle is in the sorted zone", left: byRule},
	"cut_step_mm":    {says: "cut to steps of", does: "Cut lengths are rounded up to this", left: byRule},
	"tail_first_mm":  {says: "tail, first end", does: "What is cut off after pinning at the first end", left: byRule},
	"tail_second_mm": {says: "tail, other end", does: "What is cut off after pinning at the other end", left: byRule},
	"loop_mm":        {says: "loop in the boot", does: "Wire kept in each boot, to make a contact again", left: byRule},
	"bundle_margin":  {says: "share of the current", does: "How much of the current that heat allows may be used", left: byRule},
	"ambient_c":      {says: "air round it", does: "How warm the air round the harness is", left: byRule},
	"altitude_m":     {says: "height above sea", does: "Thin air cools less", left: byRule, step: 100},
	"drop_max_v":     {says: "drop, always on", does: "Most voltage that a circuit may lose that is always on", left: byRule, step: 0.05},
	"drop_short_v": {says: "drop, now and then", does: "Most voltage that a circuit may lose that comes and goes", left: byRule,
		step: 0.05},
	"feed_load_max":   {says: "load on a fuse", does: "How much of its rating a fuse may carry, as a share", left: byRule},
	"before_max_mm":   {says: "wire before a fuse", does: "Longest wire from the supply to its fuse", left: byRule},
	"size_min":        {says: "thinnest wire", does: "The thinnest conductor that this shop handles", from: allSizes, left: byRule},
	"outer":           {says: "outermost layer", does: "Which way the outermost layer turns", left: byRule},
	"spec":            {says: "usual wire", does: "The specification that new wires get", from: specs, left: byRule},
	"colour_stock":    {says: "colours in stock", item: "colour", does: "The colours of wire that this shop keeps", from: colours},
	"filler_stock_mm": {says: "filler in stock", item: "diameter", does: "Diameters of filler that this shop keeps"},
	"filler_c":        {says: "filler withstands", does: "From the sheet of the filler", first: 100, step: 5},
	"filler_of":       {says: "filler is of", does: "What the filler in stock is made of"},
	"tape_mm":         {says: "tape is thick", does: "Thickness of the tape that binds and builds up", left: byRule, step: 0.01},
	"tape_width_mm":   {says: "tape is wide", does: "Width of the tape that binds and builds up", left: byRule},
	"adhesive_c":      {says: "adhesive withstands", does: "From the sheet of the adhesive", first: 100, step: 5},
	"adhesive":        {says: "adhesive", does: "What seals boots and transitions"},
	"pot_life_min":    {says: "pot life", unit: "min", does: "Minutes from mixing the adhesive to its setting", first: 30},
	"pack_joints":     {says: "joints from a pack", does: "How many joints one pack of adhesive does", left: byRule},
}

var reelLabels = map[string]label{
	"spec":    {says: "spec", does: "Specification on the label of the reel", from: specs},
	"size":    {says: "size", does: "Size on the label of the reel", from: sizes},
	"over_mm": {says: "measured OD", does: "Ten side by side, divided by ten", step: 0.01},
	"shelf_m": {says: "on the shelf", does: "How much of it there is", first: 100, step: 10},
}

var partLabels = map[string]label{
	"id":                 {says: "part", does: "The tube or boot in hand, as the catalogue names it", from: tubesAndBoots},
	"wall_mm":            {says: "wall, recovered", does: "Of a tube: its wall once shrunk", first: 1, step: 0.01},
	"lip_recovered_mm":   {says: "connector, recovered", does: "Of a boot: its bore at the connector, recovered", first: 20},
	"lip_supplied_mm":    {says: "connector, supplied", does: "Of a boot: its bore at the connector, as supplied", first: 30},
	"cable_recovered_mm": {says: "cable, recovered", does: "Of a boot: its bore at the cable, recovered", first: 8},
	"cable_supplied_mm":  {says: "cable, supplied", does: "Of a boot: its bore at the cable, as supplied", first: 30},
	"length_mm":          {says: "length, recovered", does: "How long it is once shrunk", first: 60},
	"supplied_mm":        {says: "length as supplied", does: "For the bill alone: no maker holds to it", first: 60},
}

var listedLabels = map[string]label{
	"signal": {says: "signal", does: "What the list calls this net"},
	"ends":   {says: "ends", item: "cavity", does: "The cavities that the list joins", from: cavityEnds},
}

package shape

// landsOn reports whether the words of a heading say where a wire ends: "Lands on", "Terminates at", "Plugs into", "Wired to".
func landsOn(all []string) bool {
	if len(all) != 2 {
		return false
	}
	switch all[0] {
	case "land", "lands", "landed", "terminates", "terminated", "ends", "arrives", "lugged", "fastens", "bolts", "bolted", "screws",
		"screwed", "clamps", "clamped", "sits":
		switch all[1] {
		case "on", "at", "in", "to":
			return true
		}
	case "plugs", "goes", "runs", "feeds", "leads", "solders", "soldered", "wires", "crimps":
		return all[1] == "into" || all[1] == "to" || all[1] == "onto"
	}
	return false
}

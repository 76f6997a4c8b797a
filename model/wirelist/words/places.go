package words

// Words of headings about the far end of a wire. From memory, no source.

// IsPlace reports whether a word is one for a place where a wire is landed on something that has no plug.
func IsPlace(w string) bool {
	switch w {
	case "lug", "lugs", "tab", "tag", "leg", "post", "blade", "screw", "pad", "spot", "fahne", "ose", "lotfahne", "cosse":
		return true
	}
	return false
}

// SaysOtherSide reports whether a word before one for a cavity says that it is of the other side, "their pin".
func SaysOtherSide(w string) bool {
	switch w {
	case "their", "its", "far", "other", "remote", "mate", "mating", "opposite", "dest", "there", "device", "deren", "dessen", "leur",
		"sa", "son", "su", "suo", "loro", "hun", "zijn":
		return true
	}
	return false
}

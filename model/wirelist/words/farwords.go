package words

// LeadsFar reports whether a folded word says that where the wire goes, or comes from, follows.
func LeadsFar(w string) bool {
	switch w {
	case "to", "from", "nach", "von", "zu", "zum", "zur", "vers", "depuis", "hacia", "desde", "hasta", "verso", "al", "alla",
		"dal", "dalla",
		"till", "fran", "naar", "van", "para", "od", "do", "til", "fra":
		return true
	}
	return false
}

// Goes reports whether a folded word before such a word says that a wire goes there.
func Goes(w string) bool {
	switch w {
	case "goes", "runs", "geht", "fuhrt", "va", "vai", "gaat", "gar", "idzie", "vede":
		return true
	}
	return false
}

// LeadsFarShortly reports whether a folded word says so behind such a word, and is another alone: "va a L5", "geht an L5".
func LeadsFarShortly(w string) bool {
	switch w {
	case "a", "au", "an", "auf", "op", "k", "ke":
		return true
	}
	return false
}

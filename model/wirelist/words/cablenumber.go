package words

// NumbersCables reports whether the folded words of a heading can be those of the numbers of single wires, which many call cables: where
// no two rows have one of them.
func NumbersCables(heading string) bool {
	switch heading {
	case "cable", "kabel", "cable no", "cable nr", "cable number", "cable ref", "kabel nr", "kabelnummer", "kabelnr", "kabel no",
		"no cable", "n cable", "n de cable", "numero de cable", "n cavo", "numero cavo", "n kabla", "nr kabla":
		return true
	}
	return false
}

package words

import "contralay/model/wirelist/name"

// ShortHead is what a whole folded heading is short for; "" where it is none such. "Out" heads the outputs of a unit that switches loads:
// behind another word it says what a wire does, "coil 2 out". Common practice, no source.
func ShortHead(heading string) name.Field {
	switch heading {
	case "out", "out no", "out no.", "out #", "out nr", "out nr.":
		return name.FieldPin
	case "w#", "w #", "#w", "w/n":
		return name.FieldWire
	}
	return ""
}

package point

import "strings"

// valuesBeforeRemark parts a text that says of a wire how it is called, its colour, and perhaps something more in brackets or behind a
// comma: "CAN H = yellow (twisted with pin 4)".
func valuesBeforeRemark(text string) (p Parts, ok bool) {
	for _, mark := range []string{" = ", ": ", " - ", " – "} {
		called, back, cut := strings.Cut(text, mark)
		if !cut || called == "" || !IsShortName(called) {
			continue
		}
		if colour, size := wireValuesOf(back); mark == " = " && colour != "" {
			return Parts{Signal: called, Colour: colour, Size: size}, true // "horn = blue, 22 AWG"
		}
		for _, sign := range []string{" (", ", ", "; "} {
			values, remark, more := strings.Cut(back, sign)
			if sign == " (" {
				inside, closed := strings.CutSuffix(remark, ")")
				if remark = inside; !closed || strings.ContainsAny(inside, "()") {
					continue
				}
			}
			if colour, size := WireValues(values); more && colour != "" && remark != "" && !holdsValue(remark) {
				return Parts{Signal: called, Colour: colour, Size: size, Note: remark}, true
			}
		}
	}
	return p, false
}

// saysEquals reports whether a text says with a sign of its own what colour its wire has: "horn = blue".
func saysEquals(text string) bool {
	p, ok := valuesBeforeRemark(text)
	return ok && strings.HasPrefix(text, p.Signal+" = ")
}

// wireValuesOf is what a text of values alone says, with or without a comma between them.
func wireValuesOf(text string) (colour, size string) {
	if colour, size = WireValues(text); colour == "" {
		colour, size = valuesOf(text)
	}
	return colour, size
}

// holdsValue reports whether a piece of a remark is a value of the wire, or says where it goes.
func holdsValue(remark string) bool {
	for piece := range strings.SplitSeq(remark, ", ") {
		if colour, size := WireValues(piece); colour != "" || size != "" || IsColourOrLetters(piece) || IsSized([]string{piece}) {
			return true
		}
	}
	return strings.HasPrefix(remark, "to ")
}

package model

import "strings"

// colourNames are the words of the digit code. Source: MIL-STD-681.
var colourNames = [10]string{"black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white"}

// ColourWords are the words of a colour code, base first, then stripes: "white/blue" of "96".
// A code of letters stays as it is.
func ColourWords(code string) string {
	var says []string
	for _, r := range code {
		if r < '0' || r > '9' {
			return code
		}
		says = append(says, colourNames[r-'0'])
	}
	return strings.Join(says, "/")
}

// SizeWords is the size of a wire with its unit: "22 AWG", "0.35 mm2".
func SizeWords(size string) string {
	if mm2, is := strings.CutSuffix(size, "mm2"); is {
		return mm2 + " mm2"
	}
	return size + " AWG"
}

// everyColour is what wire is proposed in where the shop does not say what it stocks: the ten
// colours, white with one stripe, then every other base with one stripe. It is never written to.
var everyColour = colourCodes()

func colourCodes() []string {
	const digits = "0123456789"
	var plain, white, other []string
	for _, base := range digits {
		plain = append(plain, string(base))
		for _, stripe := range digits {
			switch {
			case base == stripe:
			case base == '9':
				white = append(white, string(base)+string(stripe))
			default:
				other = append(other, string(base)+string(stripe))
			}
		}
	}
	return append(append(plain, white...), other...)
}

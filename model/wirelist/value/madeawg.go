package value

import "strings"

// isMadeAWG reports whether a number without unit is an AWG size that wire of SAE J1128 or of AS22759 is made in, and hardly a cross
// section of such wire, which is counted in AWG nearly always: the even sizes of 10 to 30. Common practice, no source.
func isMadeAWG(text string) bool {
	text = strings.TrimSpace(text)
	return len(text) == 2 && (text >= "10" && text < "30" && strings.IndexByte("02468", text[1]) >= 0 || text == "30")
}

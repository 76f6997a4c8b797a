package words

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/value"
)

// SheetConnector is the name of a sheet that begins with the designator of a connector, where the text above the pins has none: that text
// says what the whole is. "" where it is not so.
//
//	sheet "J4 feedthrough"
//	Climbing frame no. 2
//	Pin | Signal
func SheetConnector(sheet, title string) string {
	first, _, _ := strings.Cut(sheet, " ")
	if IsPlainSheet(sheet) || !isPlugName(first) || name.SaysConnector(title) {
		return ""
	}
	for _, w := range strings.FieldsFunc(title, func(r rune) bool { return strings.ContainsRune(" ,()/:-", r) }) {
		if isPlugName(w) {
			return ""
		}
	}
	return sheet
}

// isPlugName reports whether a word is up to three capitals and a number, and no mark of a revision: "J4", "CN12".
func isPlugName(w string) bool {
	const longest = 6 // bytes (no source)
	letters := strings.TrimRight(w, "0123456789")
	if len(w) > longest || letters == w || letters == "" || len(letters) > 3 || letters != strings.ToUpper(letters) ||
		value.HasDigit(letters) {
		return false
	}
	switch letters {
	case "V", "R", "REV", "VER", "ISS", "NO", "NR", "TAB", "Q":
		return false
	}
	return name.IsDesignator(w)
}

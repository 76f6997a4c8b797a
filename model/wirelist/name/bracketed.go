package name

import "strings"

// inBracketsBehind is the designator of a connector that stands alone in brackets behind its words, X1 of "Prise avant (X1)"; ""
// where none does. One or two capital letters and a number are one, but for what else is written so: a thread, a version, a voltage,
// how tight a plug is.
func inBracketsBehind(name string) string {
	open := strings.LastIndexByte(name, '(')
	if open < 2 || !strings.HasSuffix(name, ")") {
		return ""
	}
	id := strings.TrimSpace(name[open+1 : len(name)-1])
	letters := strings.TrimRight(id, "0123456789")
	if !IsDesignator(id) || len(letters) > 2 || letters != strings.ToUpper(letters) {
		return ""
	}
	switch letters {
	case "M", "V", "IP", "DT", "AS", "Q", "A", "MM", "R":
		return ""
	}
	return id
}

package bench

import (
	"contralay/ui/bench/desk"
)

// What the tests reach for.
var (
	Reasons   = reasons
	Bar       = keyBar
	BounceRow = bounceRow
	Figures   = figures
	Head      = head
	KeyList   = keyList
	Section   = discs
	SnagLine  = snagLine
)

// ByHeat colours the section by temperature.
func ByHeat(m *desk.Model) { sectionOf(m).by = byHeat }

// Codes are the SGR codes of every style of a line.
func Codes(dark bool) []string {
	var out []string
	for s := styleHead; s <= styleWarn; s++ {
		out = append(out, s.code(dark))
	}
	return out
}

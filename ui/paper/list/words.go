package list

import (
	"cmp"
	"slices"
	"strings"

	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// Colour is a colour code with its words: "96  white/blue"; any other code as it is.
func Colour(code string) string {
	says := model.ColourWords(code)
	if says == code {
		return code
	}
	return code + "  " + says
}

// ColourWord is the words of a wire's colour, with its shade: "light blue"; "" where its code has none.
func ColourWord(w *model.Wire) string {
	says := model.ColourWords(w.Colour.V)
	if says == w.Colour.V {
		says = ""
	}
	return strings.TrimSpace(string(w.Shade.V) + " " + says)
}

// ColourOf is a wire's colour on a page, code and words; a file has them in two columns, the words first: a spreadsheet
// makes 3, orange, of 03, black with orange.
func ColourOf[R any](wire func(row R) *model.Wire) Column[R] {
	return Text("colour", func(r R) string { return Colour(wire(r).Colour.V) }).InFile(
		Text("colour", func(r R) string { return ColourWord(wire(r)) }),
		Text("colour code", func(r R) string { return wire(r).Colour.V }))
}

// SizeOf is a wire's size on a page, with its unit; a file has the size alone.
func SizeOf[R any](wire func(row R) *model.Wire) Column[R] {
	return Text("size", func(r R) string { return Size(wire(r)) })
}

// Size is a wire's size with its unit: "22 AWG", "0.35 mm2".
func Size(w *model.Wire) string { return model.SizeWords(w.Size) }

// Capital is a text with its first letter a capital.
func Capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// Dash is a text, or a dash where there is none.
func Dash(s string) string { return cmp.Or(s, "-") }

// Mem marks a figure that rests on memory.
func Mem(st catalogue.Standing) string {
	if st == catalogue.Memory {
		return "~"
	}
	return ""
}

// Value is a cell of a page as a file has it: a dash says nothing there.
func Value(cell string) string {
	if cell == "-" {
		return ""
	}
	return cell
}

// bare is a head without its unit.
func bare(head string) string {
	before, _, _ := strings.Cut(head, ", ")
	return before
}

// TermOf is the termination of an end: P1 of P1:A.
func TermOf(end string) string {
	t, _, _ := strings.Cut(end, ":")
	return t
}

// Word is a word before a text, or nothing where there is none.
func Word(before, text string) string {
	if text == "" {
		return ""
	}
	return before + text
}

// NonEmpty is texts without those that say nothing.
func NonEmpty(all ...string) []string {
	return slices.DeleteFunc(all, func(s string) bool { return s == "" || s == "-" })
}

// turnStep is what a turn length is set by on the bench, mm: nobody lays to less.
const turnStep = 5.0

// Turn is a turn length as it is laid: to 5 mm.
func Turn(v unit.Millimetre) unit.Millimetre {
	return unit.Millimetre(unit.RoundHalfUp(float64(v), turnStep))
}

// Long is the length of a branch; "?" where it is not measured yet.
func Long(sys unit.System, b *model.Branch) string {
	if !b.Measured() {
		return "?"
	}
	return sys.Length(b.LengthMM)
}

// LongIn is the same with its unit, or in words.
func LongIn(sys unit.System, b *model.Branch) string {
	if !b.Measured() {
		return "not measured yet,"
	}
	return sys.Length(b.LengthMM) + " " + sys.Name()
}

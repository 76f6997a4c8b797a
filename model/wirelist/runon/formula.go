package runon

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// WithoutFormulas empties the cells of a row that hold no value: a formula that no program
// has worked out, and the error of one that could not be. What they say is reported and
// kept in the note, and never an end or a cavity. ="22" is how some programs write a text.
func WithoutFormulas(im *draft.Importer, b *shape.Block, cells []string, place table.Place) (plain []string, notes []string) {
	plain = cells
	for i, c := range cells {
		if !strings.HasPrefix(c, "=") && !strings.HasPrefix(c, "#") {
			continue
		}
		plainText, rule := "", "formula without a value"
		switch {
		case value.IsErrorValue(c):
			rule = "error value of a spreadsheet"
		case len(c) > 2 && strings.HasPrefix(c, `="`) && strings.HasSuffix(c, `"`) && !strings.ContainsAny(c[2:len(c)-1], `"`):
			plainText, rule = c[2:len(c)-1], ""
		case !strings.HasPrefix(c, "=") || len(c) < 2:
			continue
		}
		if &plain[0] == &cells[0] {
			plain = slices.Clone(cells)
		}
		plain[i] = plainText
		if rule == "" {
			continue
		}
		if i >= len(b.Cols) || b.Cols[i].Field != name.FieldIgnore {
			where := place
			where.Column = shape.At(b.Cols, i)
			im.Say(report.Warn, rule, where, c, "kept in the note")
			notes = append(notes, value.JoinNonEmpty(": ", where.Column, c))
		}
	}
	return plain, notes
}

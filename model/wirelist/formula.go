package wirelist

import (
	"slices"
	"strings"
)

// withoutFormulas empties the cells of a row that hold no value: a formula that no program
// has worked out, and the error of one that could not be. What they say is reported and
// kept in the note, and never an end or a cavity. ="22" is how some programs write a text.
func (im *importer) withoutFormulas(b *block, cells []string, place Place) (plain []string, notes []string) {
	plain = cells
	for i, c := range cells {
		if !strings.HasPrefix(c, "=") && !strings.HasPrefix(c, "#") {
			continue
		}
		value, rule := "", "formula without a value"
		switch {
		case isErrorValue(c):
			rule = "error value of a spreadsheet"
		case len(c) > 2 && strings.HasPrefix(c, `="`) && strings.HasSuffix(c, `"`) && !strings.ContainsAny(c[2:len(c)-1], `"`):
			value, rule = c[2:len(c)-1], ""
		case !strings.HasPrefix(c, "=") || len(c) < 2:
			continue
		}
		if &plain[0] == &cells[0] {
			plain = slices.Clone(cells)
		}
		plain[i] = value
		if rule == "" {
			continue
		}
		if i >= len(b.cols) || b.cols[i].field != FieldIgnore {
			where := place
			where.Column = at(b.cols, i)
			im.say(Warn, rule, where, c, "kept in the note")
			notes = append(notes, joinNonEmpty(": ", where.Column, c))
		}
	}
	return plain, notes
}

// isErrorValue: what a spreadsheet shows where a formula fails.
func isErrorValue(c string) bool {
	return slices.Contains([]string{"#REF!", "#N/A", "#VALUE!", "#NAME?", "#DIV/0!", "#NULL!", "#NUM!", "#NV", "#BEZUG!", "#WERT!"}, c)
}

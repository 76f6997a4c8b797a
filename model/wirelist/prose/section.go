package prose

import (
	"strings"

	"contralay/model/wirelist/table"
)

// WithoutSection takes the number of a section off a heading, "2. Body plug", "3) Lamps", "2.1 Lamps"; ok is false where it has none.
func WithoutSection(r table.Row, text string) (rest string, ok bool) {
	number, rest, found := strings.Cut(text, " ")
	bare := strings.TrimRight(number, ".)")
	if !found || r.Level == 0 || bare == number && !strings.Contains(bare, ".") || strings.Trim(bare, "0123456789.") != "" || bare == "" ||
		len(bare) > 5 {
		return text, false
	}
	return strings.TrimSpace(rest), true
}

// LastSection leaves out the sections of a paper before the last: what stands above a table in a section is of that section. Headings
// that are not numbered, one below the other, may all say something of it.
func LastSection(rows []table.Row) []table.Row {
	last := -1
	for i, r := range rows {
		if _, text := r.Filled(); r.Level > 0 {
			if _, ok := WithoutSection(r, text); ok {
				last = i
			}
		}
	}
	if last < 0 {
		return rows
	}
	kept := make([]table.Row, 0, len(rows))
	under := 0 // the level of a section that is over
	for i, r := range rows {
		if i < last {
			_, text := r.Filled()
			_, numbered := WithoutSection(r, text)
			switch {
			case numbered && r.Level >= rows[last].Level:
				under = r.Level
				continue
			case under > 0 && (r.Level == 0 || r.Level > under):
				continue
			}
		}
		kept = append(kept, r)
	}
	return kept
}

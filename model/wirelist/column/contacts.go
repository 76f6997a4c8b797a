package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// CountsContacts reports whether the texts above a block count contacts of all the sizes that stand in
// a column: "Size 20 sockets x3".
func CountsContacts(titles, rows []table.Row, i int) bool {
	said := map[string]int{}
	for _, t := range titles {
		_, text := t.Filled()
		if c, ok := name.ReadCount(text); ok && c.Of == "contacts" {
			if s := sizeCounted(text); s != "" {
				said[s] += c.N
			}
		}
	}
	if len(said) == 0 {
		return false
	}
	for _, r := range rows {
		if i < len(r.Cells) && r.Cells[i] != "" && !shape.IsText(r) {
			if said[strings.TrimLeft(table.Fold(r.Cells[i]), "# ")] == 0 {
				return false
			}
		}
	}
	return true
}

// CavitiesIn counts the cells of a column that name a connector and a cavity.
func CavitiesIn(rows []table.Row, i int) (n int) {
	for _, r := range rows[:min(len(rows), MostLooked)] {
		if i < len(r.Cells) && !value.IsNothing(r.Cells[i]) {
			if _, pin, ok := name.SplitEnd(r.Cells[i]); ok && name.IsCavity(pin) {
				n++
			}
		}
	}
	return n
}

// sizeCounted is the size of contacts that a count names, "20" of "Size 20 contacts x26"; "" where it
// names none.
func sizeCounted(text string) string {
	all := value.Scan(table.Fold(text))
	for i, t := range all {
		if t.Text == "size" && i+1 < len(all) && all[i+1].Kind == '0' {
			return all[i+1].Text
		}
	}
	return ""
}

package runline

import (
	"strings"

	"contralay/model/wirelist/table"
)

// Poles gives the names of some lines the minus that was taken for a dash before their values: another line has the same name with a plus.
// lines are the texts of the rows.
//
//	HE1.1 -> TB1.1   lid +   red     18awg
//	HE1.2 -> TB1.2   lid -   black   18awg
func Poles(rows []table.Row, lines []string) {
	const signal = 7 // the cell of a row for its name
	plus := map[string]bool{}
	for _, r := range rows {
		if len(r.Cells) > signal {
			if of, is := strings.CutSuffix(r.Cells[signal], " +"); is {
				plus[of] = true
			}
		}
	}
	for i, r := range rows {
		if len(r.Cells) <= signal || !plus[r.Cells[signal]] {
			continue
		}
		for _, minus := range []string{" - ", " – ", " − "} {
			if called := r.Cells[signal]; strings.Contains(lines[i]+" ", called+minus) {
				r.Cells[signal] = called + " -"
				break
			}
		}
	}
}

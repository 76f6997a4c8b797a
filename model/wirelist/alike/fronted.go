package alike

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Fronted gives lines that begin with a connector and its cavity, each or the first of some, a heading with the connector, and takes it
// off them: they tell what is in its cavities. Behind the cavity stands the colour of the wire, or that it is free.
//
//	SW1 pin 1 red 12v feed from FUSE pin 3
//	SW1 pin 2 blk ground to stud
//	pin 3 wht radio key to RADIO pin 4
func Fronted(rows []table.Row) []table.Row {
	var out []table.Row
	for i := 0; i < len(rows); i++ {
		n := frontedFrom(rows[i:])
		if n > 0 && out == nil {
			out = append(out, rows[:i]...)
		}
		last := ""
		for _, r := range rows[i : i+max(n, 1)] {
			if of, rest := front(r); n > 0 && of != "" {
				if of != last {
					out = append(out, table.Row{Line: r.Line, Cells: []string{of}, Level: runline.LowestHeading, Prose: true})
				}
				last, r.Cells = of, []string{rest}
			}
			if out != nil {
				out = append(out, r)
			}
		}
		i += max(n, 1) - 1
	}
	if out == nil {
		return rows
	}
	return out
}

// frontedFrom is how many rows from the first on are such lines; 0 where they are none.
func frontedFrom(rows []table.Row) (n int) {
	if of, _ := front(rows[0]); of == "" {
		return 0
	}
	said, used := 0, 0
	for n < len(rows) && len(rows[n].Cells) == 1 && rows[n].Level == 0 && (n == 0 || rows[n].Line == rows[n-1].Line+1) {
		_, text := front(rows[n])
		_, _, rest, ok := lead(text)
		if !ok || runline.IsPlain(rows[n].Cells[0]) {
			break
		}
		if n++; name.StateOf(rest) == name.Used {
			used++
			if _, v := valueBefore(rest); v.isValue() {
				said++
			}
		}
	}
	if said < 2 || 5*said < 4*used {
		return 0
	}
	return n
}

// front parts the connector off the front of a line, and gives the rest, which begins with a word for a cavity.
func front(r table.Row) (of, rest string) {
	if len(r.Cells) != 1 || r.Level > 0 {
		return "", ""
	}
	of, rest, ok := strings.Cut(r.Cells[0], " ")
	if _, pin := words.BehindCavityWord(rest); !ok || !pin || of != strings.ToUpper(of) || !name.IsDesignator(of) && len(of) < 2 ||
		words.IsCavityLead(table.Fold(of)) {
		return "", r.Cells[0]
	}
	return of, rest
}

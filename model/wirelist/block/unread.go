package block

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/table"
)

// Unread finds the points of a sheet that could be the cavities of a connector and are in no list that is read: they count up
// from the first, and half of their names are of nets. Each run is given with its rows.
func Unread(t *table.Table, blocks []Block) (all [][]table.Row) {
	read := map[int]bool{}
	for _, b := range blocks {
		if b.Listed || b.Runs || len(b.Head) > 0 {
			for _, r := range b.Rows {
				read[r.Line] = true
			}
		}
	}
	f := finder{t: t}
	for i := 0; i < len(t.Rows); i++ {
		n, nets := 0, 0
		for ; i+n < len(t.Rows) && !read[t.Rows[i+n].Line] && f.isPoint(t.Rows, i+n); n++ {
			pin, text, _ := point.Cut(t.Rows[i+n].Cells[0])
			if name.Ordinal(pin) != n+1 {
				break
			}
			if point.IsNetLike(text) {
				nets++
			}
		}
		if n > 2 && 2*nets >= n {
			all = append(all, t.Rows[i:i+n])
		}
		i += max(n-1, 0)
	}
	return all
}

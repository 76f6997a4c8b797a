package reading

import (
	"contralay/model/wirelist/together"
)

// orTogether adds the reading of a plain table whose columns say something only beside each other, where the best of the others leaves
// over a column that its heading calls one of devices or cavities, or finds one end of the wires alone.
//
//	Wire # | Plug | No. | Function     | COLOR       | Connected to | Pin
//	L1     | PDM  | 04  | Oil pressure | brown/black | Oil press    | A
func (l *look) orTogether(all []Reading) []Reading {
	if len(l.Src.Head) != 1 || l.Src.Listed || l.Src.Runs || len(all) == 0 && l.kindByWords() != "" {
		return all
	}
	best := -1
	for k := range all {
		if best < 0 || all[k].Score > all[best].Score {
			best = k
		}
	}
	cols, _ := l.Heads.Columns(l.Src.Head, len(l.Cols))
	if len(cols) != len(l.Cols) {
		return all
	}
	for i := range cols {
		cols[i].Unit, cols[i].Milli, cols[i].Bare = l.Cols[i].Unit, l.Cols[i].Milli, l.Cols[i].Bare
		cols[i].Said, cols[i].Alias = l.Cols[i].Said, l.Cols[i].Alias
	}
	titled := l.Titled() != "" || together.StartsTitled(l.Src.Rows)
	t := together.Table{Cols: cols, Prof: l.Prof, Rows: l.Src.Rows, Titled: titled, Words: l.Heads.Words}
	if best >= 0 && !t.LeavesOver(all[best].Block.Cols) {
		return all
	}
	given := t.Columns()
	if given == nil {
		return all
	}
	r, ok := l.finish("", given)
	if !ok || best >= 0 && t.LeavesOver(r.Block.Cols) {
		return all
	}
	for k := range all {
		all[k].Score -= leftOver
	}
	r.Score = max(r.Score, 1)
	return append(all, r)
}

// leftOver is how much less a reading counts that leaves over what another explains (no source).
const leftOver = 0.3

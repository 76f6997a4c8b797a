package table

import "slices"

// readHeaded reads a text with tabs between its cells, below headings that it does not have.
func readHeaded(name, parted string, heads []string, l Limits) ([]Table, error) {
	all, err := readParted(name, parted, '\t', 1, l)
	if err != nil || heads == nil {
		return all, err
	}
	t := &all[0]
	at := slices.IndexFunc(t.Rows, func(r Row) bool { n, _ := r.Filled(); return n > 2 })
	if at < 0 {
		return all, nil
	}
	t.Rows = slices.Insert(t.Rows, at, Row{Line: t.Rows[at].Line, Cells: heads})
	return all, nil
}

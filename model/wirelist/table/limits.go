package table

// Limits keep a list that somebody sent from filling the machine. The zero value of
// each takes the default.
type Limits struct {
	FileBytes     int // of one file as it comes
	UnpackedBytes int // of everything read out of one packed workbook
	Rows          int // of one file, all its sheets together
	Columns       int // of one row
	Cells         int // of one file; a row or cell said to repeat counts as often as it repeats
	CellBytes     int // of one cell
	Sheets        int // of one workbook
	XMLDepth      int // elements inside elements
}

// DefaultLimits are some ten times the largest harness list we have heard of
// (common practice, no source): a stop, not a limit of use. A harness of as many wires as rows can still be saved and
// loaded again.
func DefaultLimits() Limits {
	return Limits{
		FileBytes:     16 << 20,
		UnpackedBytes: 128 << 20,
		Rows:          50_000,
		Columns:       256,
		Cells:         2_000_000,
		CellBytes:     32 << 10,
		Sheets:        256,
		XMLDepth:      64,
	}
}

// filled puts the default where nothing, or nothing sensible, is given.
func (l Limits) filled() Limits {
	d := DefaultLimits()
	for _, v := range []struct {
		at *int
		or int
	}{
		{&l.FileBytes, d.FileBytes}, {&l.UnpackedBytes, d.UnpackedBytes}, {&l.Rows, d.Rows}, {&l.Columns, d.Columns},
		{&l.Cells, d.Cells}, {&l.CellBytes, d.CellBytes}, {&l.Sheets, d.Sheets}, {&l.XMLDepth, d.XMLDepth},
	} {
		if *v.at <= 0 {
			*v.at = v.or
		}
	}
	return l
}

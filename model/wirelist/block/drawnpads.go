package block

import "contralay/model/wirelist/alike"

// drawnPads is how many rows from one on draw arrows between the pads of two devices that the line above them, or the first, names.
func (f *finder) drawnPads(i int) (n int) {
	lines, headed := alike.DrawnPads(f.t.Rows, i, f.run)
	for k, l := range lines {
		f.ends[f.t.Rows[i+k].Line] = l
	}
	if headed {
		f.t.Rows[i].Gap = &[2]string{lines[0].From, lines[0].To}
	}
	return len(lines)
}

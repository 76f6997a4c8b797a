package boardpads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// matrix is a table of the pads of a board with a column for each of several modules, a row for each wire; nil where it is none.
//
//	NodeMCU | DHT22 | BMP180         NodeMCU pin | Goes to
//	3V3     | VCC   | VIN       ->   3V3         | DHT22:VCC
//	D1      | -     | SCL            3V3         | BMP180:VIN
//	                                 D1          | BMP180:SCL
//
// Every column is headed by a name that no list has for anything else, and holds pads alone.
func matrix(h shape.Headings, rows []table.Row) []table.Row {
	head := rows[0]
	x := columns{rows: rows[1:], wide: len(head.Cells)}
	if x.wide < 3 || x.wide > mostColumns || !x.arePads() {
		return nil
	}
	buses := map[string]bool{}
	for k, c := range head.Cells {
		if !isBoard(h, c) || isBusPad(c) {
			return nil
		}
		if k > 0 && (strings.Contains(c, "(") || !x.areModulePads(k, buses)) {
			return nil
		}
	}
	if len(buses) < 2 {
		return nil
	}
	line := head
	line.Cells = []string{head.Cells[0] + " pin", "Goes to"}
	made := []table.Row{line}
	for _, r := range x.rows {
		wired := false
		for k := 1; k < x.wide; k++ {
			if pad := cell(r, k); pad != "" {
				one := r
				one.Cells = []string{cell(r, 0), head.Cells[k] + ":" + pad}
				made, wired = append(made, one), true
			}
		}
		if !wired {
			r.Cells = []string{cell(r, 0), ""}
			made = append(made, r)
		}
	}
	return made
}

// areModulePads reports whether the cells of a column are pads of one module, two or more, each at one pad of the board; those of buses and
// supplies are told.
func (x columns) areModulePads(k int, buses map[string]bool) bool {
	n, known := 0, 0
	for _, r := range x.rows {
		c := cell(r, k)
		if c == "" {
			continue
		}
		if len(r.Cells) > x.wide || cell(r, 0) == "" || len(strings.Fields(c)) > 2 || isNumber(c) {
			return false
		}
		n++
		if isModulePad(c) {
			known++
		}
		if isBusPad(c) {
			buses[table.Fold(c)] = true
		}
	}
	return n > 0 && 2*known >= n
}

// modules is a table with modules and their pads in two columns, and the pads of a board in a third that its name heads, with headings
// that every list has; nil where it is none.
//
//	Module | Modulepin | ESP32-Pin         Connector | Pin | ESP32 pin
//	BME280 | VCC       | 3V3          ->   BME280    | VCC | 3V3
//	BME280 | SDA       | GPIO21            BME280    | SDA | GPIO21
func modules(rows []table.Row) []table.Row {
	head := rows[0]
	x := columns{near: -1, far: -1, rows: rows[1:], wide: len(head.Cells)}
	line := head
	line.Cells = slices.Clone(head.Cells)
	for k, c := range head.Cells {
		of := boardOf(c)
		switch {
		case of == "":
		case k > 0 && strings.EqualFold(of, strings.TrimSpace(head.Cells[k-1])) && x.far < 0:
			x.far = k
			line.Cells[k-1], line.Cells[k] = "Connector", "Pin"
		case x.near < 0:
			x.near = k
			line.Cells[k] = of + " pin"
		default:
			return nil
		}
	}
	buses := map[string]bool{}
	if x.near < 0 || x.far < 0 || !x.arePads() || !x.areModulePads(x.far, buses) || len(buses) < 2 {
		return nil
	}
	return append([]table.Row{line}, rows[1:]...)
}

// boardOf is what a heading of pads names before or in one with the word for them, "ESP32 pin", "ESP32-Pin", "Sensorpin"; "" where it
// names nothing.
func boardOf(head string) string {
	for _, word := range []string{"pin", "pad", "gpio"} {
		if n := len(head) - len(word); n > 0 && strings.EqualFold(head[n:], word) {
			return strings.TrimRight(head[:n], " -_")
		}
	}
	return ""
}

package block

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// looseEnds reports whether the ends of a sheet that are letters and a number with a sign between, "HUB-12", are devices and their
// cavities: most of the devices have several.
func (f *finder) looseEnds() bool {
	if f.loose != nil {
		return *f.loose
	}
	pins, all := map[string]map[string]bool{}, 0
	for _, r := range f.t.Rows {
		if len(r.Cells) != 1 {
			continue
		}
		from, to, _ := f.run(r)
		for _, e := range []string{from, to} {
			if !runline.IsLooseEnd(e) {
				continue
			}
			device, pin, _ := name.SplitEnd(e)
			device = table.Fold(device)
			if pins[device] == nil {
				pins[device] = map[string]bool{}
			}
			if !pins[device][pin] {
				pins[device][pin] = true
				all++
			}
		}
	}
	again := 0
	for _, of := range pins {
		if len(of) > 1 {
			again += len(of)
		}
	}
	parted := again > 1 && 2*again >= all
	f.loose = &parted
	return parted
}

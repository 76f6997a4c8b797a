package join

import (
	"slices"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// plugs are the cavities of the names in each connector of a list.
type plugs struct {
	im    *draft.Importer
	nets  map[*draft.Term]map[string]string // the cavity of each net
	apart []*draft.Item                     // the rows that were not joined
}

// look takes in, once, which names stand in which cavities.
func (p *plugs) look() {
	if p.nets != nil {
		return
	}
	p.nets = map[*draft.Term]map[string]string{}
	for _, it := range p.im.Items {
		if it.Net == "" || it.From.Term == nil || it.State == name.Spare {
			continue
		}
		if p.nets[it.From.Term] == nil {
			p.nets[it.From.Term] = map[string]string{}
		}
		p.nets[it.From.Term][it.Net] = it.From.Pin
	}
}

// all reports whether three connectors or more have the same names in the same cavities, three of them at least, and none has
// another: they are plugs of one kind, at a motor each, and no wire runs from one to the next.
//
//	Connector | Pin | Signal
//	X2 axis X | 1   | Coil A+
//	          | 2   | Coil A-
//	          | 3   | Limit
//	X3 axis Y | 1   | Coil A+
func (p *plugs) all(terms []*draft.Term) bool {
	const least = 3 // no source
	if len(terms) < least {
		return false
	}
	if p.look(); len(p.nets[terms[0]]) < least {
		return false
	}
	first := p.nets[terms[0]]
	return !slices.ContainsFunc(terms[1:], func(t *draft.Term) bool {
		if len(p.nets[t]) != len(first) {
			return true
		}
		for net, pin := range first {
			if p.nets[t][net] != pin {
				return true
			}
		}
		return false
	})
}

// saysBus reports whether a name is of a line that runs from device to device. From memory, no source.
func saysBus(signal string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(signal)), func(w string) bool {
		switch w {
		case "can", "canh", "canl", "can1", "can2", "lin", "bus", "rs485", "rs422", "i2c", "sda", "scl", "spi", "flexray", "nmea":
			return true
		}
		return false
	})
}

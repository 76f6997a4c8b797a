package bothends

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/words"
)

// OfTitle takes the cavities of a pin table for those of the connector that its title names, where their heading says nothing but that they
// are of a plug: "Conn pin" and "Socket" name no device.
//
//	Engine plug X3
//	Socket | Function
//	1      | Fan feed
func OfTitle(cols []shape.Column, titles []table.Row) {
	if len(titles) == 0 {
		return
	}
	if _, text := titles[len(titles)-1].Filled(); !titleline.Names(text) && !words.NamesStrip(text) {
		return
	}
	for i := range cols {
		c := &cols[i]
		if of := table.Fold(c.Of); c.Field == name.FieldPin && !c.Given && of != "" && (plugword.Is(of) || of == "port" || of == "conn") {
			c.Of = ""
			c.Know()
		}
	}
}

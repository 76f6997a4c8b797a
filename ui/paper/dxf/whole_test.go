package dxf_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/model/unit"
	"contralay/ui/paper/dxf"
	"contralay/ui/paper/plot"
)

// A whole file, each pair worked out by hand from the reference of release 12: what it lies within, the two kinds of line, twelve layers
// each in its colour, a dashed line closed, a text turned and a circle. Groups 10, 20 and 30 are a point, 62 a colour, 70 flags.
func TestWholeFile(t *testing.T) {
	s := &plot.Sheet{Box: plot.Box{Low: plot.Point{X: -1.5, Y: -2}, High: plot.Point{X: 90, Y: 30}}}
	s.Add(plot.Shape{Layer: plot.Lead, Line: plot.Line{Wide: 0.1, Dash: []unit.Millimetre{1, 1}}, Closed: true, Way: []plot.Point{{X: 1,
		Y: 2},
		{X: 3, Y: -4}}})
	s.Add(plot.Shape{Layer: plot.Frame, Text: "A °", Middle: plot.Point{X: 7, Y: 8}, Size: 20.48, Turn: 90})
	s.Add(plot.Shape{Layer: plot.PegLayer, Line: plot.Line{Wide: 0.1}, Middle: plot.Point{X: 5, Y: 6}, Radius: 3})
	want := "0 SECTION|2 HEADER|9 $ACADVER|1 AC1009|9 $EXTMIN|10 -1.5000|20 -2.0000|30 0.0000|9 $EXTMAX|10 90.0000|20 30.0000|30 0.0000|" +
		"0 ENDSEC|0 SECTION|2 TABLES|0 TABLE|2 LTYPE|70 2|" +
		"0 LTYPE|2 CONTINUOUS|70 64|3 Solid line|72 65|73 0|40 0.0000|" +
		"0 LTYPE|2 DASHED|70 64|3 Dashed line|72 65|73 2|40 6.0000|49 4.0000|49 -2.0000|0 ENDTAB|0 TABLE|2 LAYER|70 12|"
	for _, l := range strings.Fields("BUNDLE:7 COVER:5 ZONE:3 CENTRE:1 LAY:4 SPLICE:6 LABEL:2 CONNECTOR:7 PEG:1 LEAD:8 TEXT:7 FRAME:7") {
		name, colour, _ := strings.Cut(l, ":")
		want += "0 LAYER|2 " + name + "|70 0|62 " + colour + "|6 CONTINUOUS|"
	}
	want += "0 ENDTAB|0 ENDSEC|0 SECTION|2 ENTITIES|" +
		"0 POLYLINE|8 LEAD|6 DASHED|66 1|10 0.0000|20 0.0000|30 0.0000|70 1|0 VERTEX|8 LEAD|10 1.0000|20 2.0000|30 0.0000|" +
		"0 VERTEX|8 LEAD|10 3.0000|20 -4.0000|30 0.0000|0 SEQEND|8 LEAD|" +
		"0 TEXT|8 FRAME|10 7.0000|20 8.0000|30 0.0000|40 14.8000|1 A deg|50 90.0000|41 0.7500|" +
		"0 CIRCLE|8 PEG|10 5.0000|20 6.0000|30 0.0000|40 3.0000|0 ENDSEC|0 EOF|"
	got := ""
	for _, p := range read(t, dxf.Bytes(s)) {
		got += fmt.Sprintf("%d %s|", p.code, p.value)
	}
	if got != want {
		k := 0
		for k < min(len(got), len(want)) && got[k] == want[k] {
			k++
		}
		t.Errorf("from byte %d: %q, by hand %q", k, got[k:min(len(got), k+80)], want[k:min(len(want), k+80)])
	}
}

package huecodes_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist/huecodes"
	"contralay/model/wirelist/value"
)

// Short forms are read as those of one language, all together; what two colours could be stays unread.
func TestShortFormsOfLanguages(t *testing.T) {
	for _, row := range []struct{ lang, cells, want string }{
		{"nl", "zw|br|bl/wt|gn/ge", "black|brown|blue/white|green/yellow"},
		{"nl", "ge/gr|br|zw|bl", "yellow/green|brown|black|blue"},
		{"es", "ng|bl|az|am/vd", "black|white|blue|yellow/green"},
		{"fr", "NO|BE/RG|OR|BA", "black|blue/red|orange|white"},
		{"it", "R/N|M|L|H/B", "red/black|brown|blue|grey/white"},
		{"it", "Az|N/Bi|Ar|Gr", "light blue|black/white|orange|grey"},
		{"fi", "sin|kevi|vi|musta", "blue|yellow/green|green|black"},
		{"sv", "sv|rö|vi", "black|red|"},
		{"en", "zw|gs|ge|pa|bl", "black|grey|yellow|violet|blue"},
		{"en", "xq|zw|gs|pa", "|||"},
		{"en", "red|blue|grey", "red|blue|grey"},
	} {
		key, of, _ := huecodes.Of(strings.Split(row.cells, "|"), row.lang)
		want := strings.Split(row.want, "|")
		for i, cell := range strings.Split(row.cells, "|") {
			c, ok := value.ParseColour(key.InEnglish(cell), row.lang)
			if got := c.String(); ok && got != want[i] || !ok && want[i] != "" {
				t.Errorf("%s, %q: %q is %q of %q, want %q", row.lang, row.cells, cell, got, of, want[i])
			}
		}
	}
}

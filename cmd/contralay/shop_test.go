package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A shop's own entries win over the embedded ones, from --catalogue and from the
// user's configuration folder; one without a source is refused by name. Seven
// equal wires come to 3.0226 of their diameter at ratio 12 (six on one, lift
// 0.0114): 3.29 for 1.09 mm, 3.63 for the shop's 1.20.
func TestShopCatalogue(t *testing.T) {
	const entry = `[[wire]]
spec = "AS22759/32"
size = "22"
over_mm = 1.2
area_mm2 = 0.382
ohm_per_km = 53.1
rated_c = 150.0
standing = "house"
`
	dir := t.TempDir()
	own := filepath.Join(dir, "contralay", "catalogue.toml")
	bad := filepath.Join(dir, "bad.toml")
	if err := os.MkdirAll(filepath.Dir(own), 0o755); err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{own: entry + "source = \"measured\"\n", bad: entry} {
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	for _, c := range []struct {
		name, config string
		args         []string
		want         string
		fails        bool
	}{
		{"embedded", t.TempDir(), nil, "3.295", false},
		{"--catalogue", t.TempDir(), []string{"--catalogue", own}, "3.627", false},
		{"configuration folder", dir, nil, "3.627", false},
		{"without a source", t.TempDir(), []string{"--catalogue", bad}, "source: it is missing", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			o := callIn(t, environ(t, "XDG_CONFIG_HOME="+c.config), "", append([]string{"plan", "7x22"}, c.args...)...)
			if !strings.Contains(o.out+o.err, c.want) || (o.code != ok) != c.fails {
				t.Errorf("want %q, got %+v", c.want, o)
			}
		})
	}
}

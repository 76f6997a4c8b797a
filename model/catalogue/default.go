package catalogue

import (
	"embed"
	"fmt"
)

//go:embed data/*.toml
var data embed.FS

// Default reads the catalogue that comes with the program. It is parsed anew at
// each call: call it once and hand it on. An error means that the program was
// built from broken tables.
func Default() (*Catalogue, error) {
	files, err := data.ReadDir("data") // sorted by name
	if err != nil {
		return nil, fmt.Errorf("embedded catalogue: %w", err)
	}
	all := empty()
	for _, f := range files {
		r, err := data.Open("data/" + f.Name())
		if err != nil {
			return nil, fmt.Errorf("embedded catalogue: %w", err)
		}
		c, err := Read(r, f.Name())
		if err != nil {
			return nil, fmt.Errorf("embedded catalogue: %w", err)
		}
		all = Merge(all, c)
	}
	return all, nil
}

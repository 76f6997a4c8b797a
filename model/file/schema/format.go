package schema

import (
	"fmt"
	"strconv"

	"contralay/model"
)

// Format is the format of the files this program reads and writes.
const Format = 1

// FormatPath is the path of the key that every file must begin with.
const FormatPath = ".format"

// formatKey holds no value of a harness: it is the same in every file.
func formatKey() key[model.Harness] {
	return must(key[model.Harness]{
		name: "format",
		put: func(_ *model.Harness, raw any) problem {
			if v, ok := raw.(int64); ok && v == Format {
				return ""
			}
			return bad("is "+describe(raw), fmt.Sprintf("%d, the only format this program reads", Format))
		},
		is:  Key{Kind: KindCount, Least: Format, Most: Format},
		get: func(*model.Harness) string { return strconv.Itoa(Format) },
		raw: func(*model.Harness) any { return int64(Format) },
	})
}

// format is judged before anything else: of another format nothing is known.
func (d *decoder) format(raw map[string]any) {
	k := formatKey()
	at := place{}.key(k.name)
	v, given := raw[k.name]
	if !given {
		d.say(at, problem(fmt.Sprintf("it is missing. Put format = %d at the head of the file", Format)))
		return
	}
	if p := k.put(nil, v); p != "" {
		d.say(at, p)
	}
}

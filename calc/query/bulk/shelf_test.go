package bulk_test

import (
	"sync"

	"contralay/model/catalogue"
)

// shelf is the catalogue, read once.
var shelf = sync.OnceValues(catalogue.Default)

package wires

// What the tests reach for.
var (
	AddLike    = addLike
	CapAt      = capAt
	End        = endOf
	EndChoices = endChoices
	PutEnd     = putEnd
	SetEnd     = setEnd
	Share      = shareOf
)

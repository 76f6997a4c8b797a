module small

go 1.26

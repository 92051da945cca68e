-- A lot that a receipt made goes with the receipt; its numbers stay there.
GRANT DELETE ON lots TO tankrounds_app;

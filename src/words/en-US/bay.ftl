bay-being-levelled = being leveled
bay-was-not-levelled = { $operation } was not leveled

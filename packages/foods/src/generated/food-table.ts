// Made by packages/foods/scripts/build-data.mjs from the catalogue in packages/foods/data. Do not edit: see docs/foods.md.

export const FOOD_TABLE = `quern food table 1
N	energyKcal protein fat saturates trans monounsaturates polyunsaturates carbohydrateByDifference sugars starch fibre alcohol cholesterol sodium potassium calcium iron vitaminD water ash
S	usda	United States Department of Agriculture, Agricultural Research Service, National Nutrient Database for Standard Reference, Release 28 (2015, with the changes of May 2016), public domain
S	usda-r27	United States Department of Agriculture, Agricultural Research Service, National Nutrient Database for Standard Reference, Release 27 (2014), weights of household measures, public domain
S	survey	United States Department of Agriculture, Agricultural Research Service, Food and Nutrient Database for Dietary Studies 2017-2018, public domain
S	mill	King Arthur Baking, Ingredient Weight Chart (flour spooned into the cup and swept)
S	ci	Cook's Illustrated, Baking conversion chart (flour dipped and swept)
S	cakebible	R. L. Beranbaum, The Cake Bible, table of weights
S	bba	P. Reinhart, The Bread Baker's Apprentice (2001), table of weights
S	au250	Sharp R-880F oven handbook, Australian standard measures (cup of 250 ml)
S	school	Weights used in a school kitchen, as listed by a home cook
S	practice	common practice, no source
S	memory	typical declared value, from memory
S	egg-grades	Commission Regulation (EC) No 589/2008, Article 4: weight grades of eggs in the shell, S below 53 g, M 53 to 63 g, L 63 to 73 g
D	survey/11115400	Kefir, NS as to fat content
D	survey/11370000	Coconut milk
D	survey/42401100	Yogurt, coconut milk
D	usda/01001	Butter, salted
D	usda/01002	Butter, whipped, with salt
D	usda/01003	Butter oil, anhydrous
D	usda/01004	Cheese, blue
D	usda/01005	Cheese, brick
D	usda/01006	Cheese, brie
D	usda/01007	Cheese, camembert
D	usda/01009	Cheese, cheddar
D	usda/01010	Cheese, cheshire
D	usda/01011	Cheese, colby
D	usda/01012	Cheese, cottage, creamed, large or small curd
D	usda/01015	Cheese, cottage, lowfat, 2% milkfat
D	usda/01017	Cheese, cream
D	usda/01018	Cheese, edam
D	usda/01019	Cheese, feta
D	usda/01020	Cheese, fontina
D	usda/01021	Cheese, gjetost
D	usda/01022	Cheese, gouda
D	usda/01023	Cheese, gruyere
D	usda/01024	Cheese, limburger
D	usda/01025	Cheese, monterey
D	usda/01026	Cheese, mozzarella, whole milk
D	usda/01027	Cheese, mozzarella, whole milk, low moisture
D	usda/01029	Cheese, mozzarella, low moisture, part-skim
D	usda/01030	Cheese, muenster
D	usda/01031	Cheese, neufchatel
D	usda/01032	Cheese, parmesan, grated
D	usda/01033	Cheese, parmesan, hard
D	usda/01034	Cheese, port de salut
D	usda/01035	Cheese, provolone
D	usda/01036	Cheese, ricotta, whole milk
D	usda/01037	Cheese, ricotta, part skim milk
D	usda/01038	Cheese, romano
D	usda/01039	Cheese, roquefort
D	usda/01040	Cheese, swiss
D	usda/01041	Cheese, tilsit
D	usda/01042	Cheese, pasteurized process, American, fortified with vitamin D
D	usda/01049	Cream, fluid, half and half
D	usda/01050	Cream, fluid, light (coffee cream or table cream)
D	usda/01052	Cream, fluid, light whipping
D	usda/01053	Cream, fluid, heavy whipping
D	usda/01054	Cream, whipped, cream topping, pressurized
D	usda/01056	Cream, sour, cultured
D	usda/01057	Eggnog
D	usda/01078	Milk, producer, fluid, 3.7% milkfat
D	usda/01088	Milk, buttermilk, fluid, cultured, lowfat
D	usda/01094	Milk, buttermilk, dried
D	usda/01095	Milk, canned, condensed, sweetened
D	usda/01102	Milk, chocolate, fluid, commercial, whole, with added vitamin A and vitamin D
D	usda/01106	Milk, goat, fluid, with added vitamin D
D	usda/01108	Milk, indian buffalo, fluid
D	usda/01109	Milk, sheep, fluid
D	usda/01112	Whey, acid, fluid
D	usda/01114	Whey, sweet, fluid
D	usda/01115	Whey, sweet, dried
D	usda/01116	Yogurt, plain, whole milk, 8 grams protein per 8 ounce
D	usda/01117	Yogurt, plain, low fat, 12 grams protein per 8 ounce
D	usda/01118	Yogurt, plain, skim milk, 13 grams protein per 8 ounce
D	usda/01119	Yogurt, vanilla, low fat, 11 grams protein per 8 ounce
D	usda/01123	Egg, whole, raw, fresh
D	usda/01124	Egg, white, raw, fresh
D	usda/01125	Egg, yolk, raw, fresh
D	usda/01126	Egg, yolk, raw, frozen, pasteurized
D	usda/01129	Egg, whole, cooked, hard-boiled
D	usda/01133	Egg, whole, dried
D	usda/01138	Egg, duck, whole, fresh, raw
D	usda/01139	Egg, goose, whole, fresh, raw
D	usda/01140	Egg, quail, whole, fresh, raw
D	usda/01141	Egg, turkey, whole, fresh, raw
D	usda/01145	Butter, without salt
D	usda/01151	Milk, nonfat, fluid, without added vitamin A and vitamin D (fat free or skim)
D	usda/01155	Milk, dry, nonfat, instant, without added vitamin A and vitamin D
D	usda/01156	Cheese, goat, hard type
D	usda/01157	Cheese, goat, semisoft type
D	usda/01159	Cheese, goat, soft type
D	usda/01171	Egg, whole, raw, frozen, pasteurized
D	usda/01172	Egg, white, raw, frozen, pasteurized
D	usda/01173	Egg, white, dried
D	usda/01174	Milk, reduced fat, fluid, 2% milkfat, without added vitamin A and vitamin D
D	usda/01175	Milk, fluid, 1% fat, without added vitamin A and vitamin D
D	usda/01178	Sour cream, reduced fat
D	usda/01211	Milk, whole, 3.25% milkfat, without added vitamin A and vitamin D
D	usda/01212	Milk, dry, whole, without added vitamin D
D	usda/01214	Milk, canned, evaporated, without added vitamin A and vitamin D
D	usda/01225	Dulce de Leche
D	usda/01228	Cheese, fresh, queso fresco
D	usda/01229	Cheese, white, queso blanco
D	usda/01230	Milk, buttermilk, fluid, whole
D	usda/01256	Yogurt, Greek, plain, nonfat
D	usda/01260	Cheese, cheddar, reduced fat
D	usda/01267	Cheese, mexican, queso cotija
D	usda/01287	Yogurt, Greek, plain, lowfat
D	usda/01293	Yogurt, Greek, plain, whole milk
D	usda/02001	Spices, allspice, ground
D	usda/02002	Spices, anise seed
D	usda/02003	Spices, basil, dried
D	usda/02004	Spices, bay leaf
D	usda/02005	Spices, caraway seed
D	usda/02006	Spices, cardamom
D	usda/02007	Spices, celery seed
D	usda/02008	Spices, chervil, dried
D	usda/02009	Spices, chili powder
D	usda/02010	Spices, cinnamon, ground
D	usda/02011	Spices, cloves, ground
D	usda/02012	Spices, coriander leaf, dried
D	usda/02013	Spices, coriander seed
D	usda/02014	Spices, cumin seed
D	usda/02015	Spices, curry powder
D	usda/02016	Spices, dill seed
D	usda/02017	Spices, dill weed, dried
D	usda/02018	Spices, fennel seed
D	usda/02019	Spices, fenugreek seed
D	usda/02020	Spices, garlic powder
D	usda/02021	Spices, ginger, ground
D	usda/02022	Spices, mace, ground
D	usda/02023	Spices, marjoram, dried
D	usda/02024	Spices, mustard seed, ground
D	usda/02025	Spices, nutmeg, ground
D	usda/02026	Spices, onion powder
D	usda/02027	Spices, oregano, dried
D	usda/02028	Spices, paprika
D	usda/02029	Spices, parsley, dried
D	usda/02030	Spices, pepper, black
D	usda/02031	Spices, pepper, red or cayenne
D	usda/02032	Spices, pepper, white
D	usda/02033	Spices, poppy seed
D	usda/02034	Spices, poultry seasoning
D	usda/02035	Spices, pumpkin pie spice
D	usda/02036	Spices, rosemary, dried
D	usda/02037	Spices, saffron
D	usda/02038	Spices, sage, ground
D	usda/02039	Spices, savory, ground
D	usda/02041	Spices, tarragon, dried
D	usda/02042	Spices, thyme, dried
D	usda/02043	Spices, turmeric, ground
D	usda/02044	Basil, fresh
D	usda/02045	Dill weed, fresh
D	usda/02046	Mustard, prepared, yellow
D	usda/02047	Salt, table
D	usda/02048	Vinegar, cider
D	usda/02049	Thyme, fresh
D	usda/02050	Vanilla extract
D	usda/02051	Vanilla extract, imitation, alcohol
D	usda/02053	Vinegar, distilled
D	usda/02054	Capers, canned
D	usda/02055	Horseradish, prepared
D	usda/02063	Rosemary, fresh
D	usda/02064	Peppermint, fresh
D	usda/02065	Spearmint, fresh
D	usda/02066	Spearmint, dried
D	usda/02068	Vinegar, red wine
D	usda/02069	Vinegar, balsamic
D	usda/02075	Seasoning mix, dry, taco, original
D	usda/04001	Fat, beef tallow
D	usda/04002	Lard
D	usda/04025	Salad dressing, mayonnaise, regular
D	usda/04037	Oil, rice bran
D	usda/04038	Oil, wheat germ
D	usda/04042	Oil, peanut, salad or cooking
D	usda/04044	Oil, soybean, salad or cooking
D	usda/04047	Oil, coconut
D	usda/04053	Oil, olive, salad or cooking
D	usda/04055	Oil, palm
D	usda/04058	Oil, sesame, salad or cooking
D	usda/04135	Salad dressing, home recipe, vinegar and oil
D	usda/04501	Oil, cocoa butter
D	usda/04502	Oil, cottonseed, salad or cooking
D	usda/04506	Oil, sunflower, linoleic, (approx. 65%)
D	usda/04510	Oil, safflower, salad or cooking, linoleic, (over 70%)
D	usda/04517	Oil, grapeseed
D	usda/04518	Oil, corn, industrial and retail, all purpose salad or cooking
D	usda/04520	Fat, mutton tallow
D	usda/04528	Oil, walnut
D	usda/04529	Oil, almond
D	usda/04531	Oil, soybean lecithin
D	usda/04532	Oil, hazelnut
D	usda/04542	Fat, chicken
D	usda/04574	Fat, duck
D	usda/04576	Fat, goose
D	usda/04581	Oil, avocado
D	usda/04582	Oil, canola
D	usda/04583	Oil, mustard
D	usda/04609	Animal fat, bacon grease
D	usda/04610	Margarine, regular, 80% fat, composite, stick, with salt
D	usda/04611	Margarine, regular, 80% fat, composite, tub, with salt
D	usda/04615	Shortening, vegetable, household, composite
D	usda/05006	Chicken, broilers or fryers, meat and skin, raw
D	usda/05013	Chicken, broilers or fryers, meat only, roasted
D	usda/05015	Chicken, broilers or fryers, skin only, raw
D	usda/05025	Chicken, heart, all classes, raw
D	usda/05027	Chicken, liver, all classes, raw
D	usda/05057	Chicken, broilers or fryers, breast, meat and skin, raw
D	usda/05062	Chicken, broiler or fryers, breast, skinless, boneless, meat only, raw
D	usda/05066	Chicken, broilers or fryers, drumstick, meat and skin, raw
D	usda/05075	Chicken, broilers or fryers, leg, meat and skin, raw
D	usda/05091	Chicken, broilers or fryers, thigh, meat and skin, raw
D	usda/05096	Chicken, broilers or fryers, dark meat, thigh, meat only, raw
D	usda/05100	Chicken, broilers or fryers, wing, meat and skin, raw
D	usda/05139	Duck, domesticated, meat and skin, raw
D	usda/05141	Duck, domesticated, meat only, raw
D	usda/05143	Duck, domesticated, liver, raw
D	usda/05146	Goose, domesticated, meat and skin, raw
D	usda/05151	Guinea hen, meat and skin, raw
D	usda/05153	Pheasant, raw, meat and skin
D	usda/05157	Quail, meat and skin, raw
D	usda/05160	Squab, (pigeon), meat and skin, raw
D	usda/05165	Turkey, whole, meat and skin, raw
D	usda/05193	Turkey, all classes, leg, meat and skin, raw
D	usda/05219	Turkey, breast, from whole bird, meat only, raw
D	usda/05305	Ground turkey, raw
D	usda/05307	Chicken, cornish game hens, meat and skin, raw
D	usda/05332	Chicken, ground, raw
D	usda/05654	Ostrich, tenderloin, raw
D	usda/06076	Soup, beef broth, cubed, dry
D	usda/06081	Soup, chicken broth cubes, dry
D	usda/06112	Sauce, teriyaki, ready-to-serve
D	usda/06150	Sauce, barbecue
D	usda/06164	Sauce, salsa, ready-to-serve
D	usda/06168	Sauce, ready-to-serve, pepper or hot
D	usda/06170	Soup, stock, beef, home-prepared
D	usda/06172	Soup, stock, chicken, home-prepared
D	usda/06174	Soup, stock, fish, home-prepared
D	usda/06175	Sauce, hoisin, ready-to-serve
D	usda/06176	Sauce, oyster, ready-to-serve
D	usda/06179	Sauce, fish, ready-to-serve
D	usda/06626	Sauce, pesto, ready-to-serve, refrigerated
D	usda/06631	Sauce, hot chile, sriracha
D	usda/06700	Soup, vegetable broth, ready to serve
D	usda/06931	Sauce, pasta, spaghetti/marinara, ready-to-serve
D	usda/06971	Sauce, worcestershire
D	usda/07005	Blood sausage
D	usda/07019	Chorizo, pork and beef
D	usda/07029	Ham, sliced, regular (approximately 11% fat)
D	usda/07036	Sausage, Italian, pork, raw
D	usda/07041	Liver sausage, liverwurst, pork
D	usda/07050	Mortadella, beef, pork
D	usda/07053	Pate, chicken liver, canned
D	usda/07057	Pepperoni, beef and pork, sliced
D	usda/07063	Pork sausage, link/patty, unprepared
D	usda/07071	Salami, dry or hard, pork
D	usda/07074	Smoked link sausage, pork
D	usda/07254	Turkey bacon, unprepared
D	usda/07950	Frankfurter, meat
D	usda/08120	Cereals, oats, regular and quick, not fortified, dry
D	usda/08156	Cereals ready-to-eat, rice, puffed, fortified
D	usda/08160	Cereals, corn grits, yellow, regular and quick, unenriched, dry
D	usda/08172	Cereals, farina, unenriched, dry
D	usda/09003	Apples, raw, with skin
D	usda/09004	Apples, raw, without skin
D	usda/09011	Apples, dried, sulfured, uncooked
D	usda/09016	Apple juice, canned or bottled, unsweetened, without added ascorbic acid
D	usda/09017	Apple juice, frozen concentrate, unsweetened, undiluted, without added ascorbic acid
D	usda/09019	Applesauce, canned, unsweetened, without added ascorbic acid
D	usda/09020	Applesauce, canned, sweetened, without salt
D	usda/09021	Apricots, raw
D	usda/09024	Apricots, canned, juice pack, with skin, solids and liquids
D	usda/09032	Apricots, dried, sulfured, uncooked
D	usda/09036	Apricot nectar, canned, without added ascorbic acid
D	usda/09037	Avocados, raw, all commercial varieties
D	usda/09040	Bananas, raw
D	usda/09041	Bananas, dehydrated, or banana powder
D	usda/09042	Blackberries, raw
D	usda/09044	Cherries, tart, dried, sweetened
D	usda/09048	Blackberries, frozen, unsweetened
D	usda/09050	Blueberries, raw
D	usda/09054	Blueberries, frozen, unsweetened
D	usda/09057	Boysenberries, frozen, unsweetened
D	usda/09059	Breadfruit, raw
D	usda/09060	Carambola, (starfruit), raw
D	usda/09062	Cherimoya, raw
D	usda/09063	Cherries, sour, red, raw
D	usda/09070	Cherries, sweet, raw
D	usda/09072	Cherries, sweet, canned, juice pack, solids and liquids
D	usda/09077	Crabapples, raw
D	usda/09078	Cranberries, raw
D	usda/09079	Cranberries, dried, sweetened
D	usda/09081	Cranberry sauce, canned, sweetened
D	usda/09083	Currants, european black, raw
D	usda/09084	Currants, red and white, raw
D	usda/09085	Currants, zante, dried
D	usda/09087	Dates, deglet noor
D	usda/09088	Elderberries, raw
D	usda/09089	Figs, raw
D	usda/09094	Figs, dried, uncooked
D	usda/09107	Gooseberries, raw
D	usda/09110	Goji berries, dried
D	usda/09111	Grapefruit, raw, pink and red and white, all areas
D	usda/09116	Grapefruit, raw, white, all areas
D	usda/09128	Grapefruit juice, white, raw
D	usda/09132	Grapes, red or green (European type, such as Thompson seedless), raw
D	usda/09135	Grape juice, canned or bottled, unsweetened, without added ascorbic acid
D	usda/09138	Groundcherries, (cape-gooseberries or poha), raw
D	usda/09139	Guavas, common, raw
D	usda/09144	Jackfruit, raw
D	usda/09148	Kiwifruit, green, raw
D	usda/09149	Kumquats, raw
D	usda/09150	Lemons, raw, without peel
D	usda/09152	Lemon juice, raw
D	usda/09153	Lemon juice from concentrate, canned or bottled
D	usda/09156	Lemon peel, raw
D	usda/09159	Limes, raw
D	usda/09160	Lime juice, raw
D	usda/09163	Blueberries, dried, sweetened
D	usda/09164	Litchis, raw
D	usda/09167	Loganberries, frozen
D	usda/09174	Loquats, raw
D	usda/09176	Mangos, raw
D	usda/09178	Mango, dried, sweetened
D	usda/09181	Melons, cantaloupe, raw
D	usda/09184	Melons, honeydew, raw
D	usda/09190	Mulberries, raw
D	usda/09191	Nectarines, raw
D	usda/09193	Olives, ripe, canned (small-extra large)
D	usda/09195	Olives, pickled, canned or bottled, green
D	usda/09200	Oranges, raw, all commercial varieties
D	usda/09206	Orange juice, raw
D	usda/09214	Orange juice, frozen concentrate, unsweetened, undiluted
D	usda/09216	Orange peel, raw
D	usda/09218	Tangerines, (mandarin oranges), raw
D	usda/09219	Tangerines, (mandarin oranges), canned, juice pack
D	usda/09221	Tangerine juice, raw
D	usda/09226	Papayas, raw
D	usda/09231	Passion-fruit, (granadilla), purple, raw
D	usda/09232	Passion-fruit juice, purple, raw
D	usda/09236	Peaches, yellow, raw
D	usda/09238	Peaches, canned, juice pack, solids and liquids
D	usda/09246	Peaches, dried, sulfured, uncooked
D	usda/09251	Peach nectar, canned, without added ascorbic acid
D	usda/09252	Pears, raw
D	usda/09254	Pears, canned, juice pack, solids and liquids
D	usda/09259	Pears, dried, sulfured, uncooked
D	usda/09262	Pear nectar, canned, without added ascorbic acid
D	usda/09263	Persimmons, japanese, raw
D	usda/09266	Pineapple, raw, all varieties
D	usda/09268	Pineapple, canned, juice pack, solids and liquids
D	usda/09273	Pineapple juice, canned or bottled, unsweetened, without added ascorbic acid
D	usda/09277	Plantains, raw
D	usda/09279	Plums, raw
D	usda/09286	Pomegranates, raw
D	usda/09287	Prickly pears, raw
D	usda/09291	Plums, dried (prunes), uncooked
D	usda/09294	Prune juice, canned
D	usda/09295	Pummelo, raw
D	usda/09296	Quinces, raw
D	usda/09297	Raisins, golden seedless
D	usda/09298	Raisins, seedless
D	usda/09302	Raspberries, raw
D	usda/09307	Rhubarb, raw
D	usda/09315	Soursop, raw
D	usda/09316	Strawberries, raw
D	usda/09318	Strawberries, frozen, unsweetened
D	usda/09322	Tamarinds, raw
D	usda/09326	Watermelon, raw
D	usda/09328	Maraschino cherries, canned, drained
D	usda/09340	Pears, asian, raw
D	usda/09421	Dates, medjool
D	usda/09422	Durian, raw or frozen
D	usda/09423	Prune puree
D	usda/09426	Candied fruit
D	usda/09433	Clementines, raw
D	usda/09436	Mango nectar, canned
D	usda/09442	Pomegranate juice, bottled
D	usda/09501	Apples, raw, golden delicious, with skin
D	usda/09502	Apples, raw, granny smith, with skin
D	usda/09518	Raspberries, frozen, unsweetened
D	usda/10004	Pork, fresh, backfat, raw
D	usda/10005	Pork, fresh, belly, raw
D	usda/10008	Pork, fresh, leg (ham), whole, separable lean and fat, raw
D	usda/10020	Pork, fresh, loin, whole, separable lean and fat, raw
D	usda/10036	Pork, fresh, loin, center loin (chops), bone-in, separable lean and fat, raw
D	usda/10070	Pork, fresh, shoulder, whole, separable lean and fat, raw
D	usda/10088	Pork, fresh, spareribs, separable lean and fat, raw
D	usda/10102	Pork, fresh, variety meats and by-products, feet, raw
D	usda/10105	Pork, fresh, variety meats and by-products, jowl, raw
D	usda/10106	Pork, fresh, variety meats and by-products, kidneys, raw
D	usda/10110	Pork, fresh, variety meats and by-products, liver, raw
D	usda/10123	Pork, cured, bacon, unprepared
D	usda/10130	Canadian bacon, unprepared
D	usda/10150	Pork, cured, ham, whole, separable lean and fat, unheated
D	usda/10165	Pork, cured, salt pork, raw
D	usda/10218	Pork, fresh, loin, tenderloin, separable lean and fat, raw
D	usda/10219	Pork, fresh, ground, raw
D	usda/10973	Pork, ground, 96% lean / 4% fat, raw
D	usda/11001	Alfalfa seeds, sprouted, raw
D	usda/11003	Amaranth leaves, raw
D	usda/11007	Artichokes, (globe or french), raw
D	usda/11008	Artichokes, (globe or french), cooked, boiled, drained, without salt
D	usda/11011	Asparagus, raw
D	usda/11024	Balsam-pear (bitter gourd), pods, raw
D	usda/11028	Bamboo shoots, canned, drained solids
D	usda/11031	Lima beans, immature seeds, raw
D	usda/11043	Mung beans, mature seeds, sprouted, raw
D	usda/11052	Beans, snap, green, raw
D	usda/11080	Beets, raw
D	usda/11081	Beets, cooked, boiled, drained
D	usda/11086	Beet greens, raw
D	usda/11088	Broadbeans, immature seeds, raw
D	usda/11090	Broccoli, raw
D	usda/11096	Broccoli raab, raw
D	usda/11098	Brussels sprouts, raw
D	usda/11104	Burdock root, raw
D	usda/11109	Cabbage, raw
D	usda/11112	Cabbage, red, raw
D	usda/11114	Cabbage, savoy, raw
D	usda/11116	Cabbage, chinese (pak-choi), raw
D	usda/11118	Cabbage, kimchi
D	usda/11119	Cabbage, chinese (pe-tsai), raw
D	usda/11122	Cardoon, raw
D	usda/11124	Carrots, raw
D	usda/11134	Cassava, raw
D	usda/11135	Cauliflower, raw
D	usda/11141	Celeriac, raw
D	usda/11143	Celery, raw
D	usda/11147	Chard, swiss, raw
D	usda/11149	Chayote, fruit, raw
D	usda/11151	Chicory, witloof, raw
D	usda/11156	Chives, raw
D	usda/11161	Collards, raw
D	usda/11165	Coriander (cilantro) leaves, raw
D	usda/11167	Corn, sweet, yellow, raw
D	usda/11172	Corn, sweet, yellow, canned, whole kernel, drained solids
D	usda/11174	Corn, sweet, yellow, canned, cream style, regular pack
D	usda/11190	Cornsalad, raw
D	usda/11203	Cress, garden, raw
D	usda/11205	Cucumber, with peel, raw
D	usda/11207	Dandelion greens, raw
D	usda/11209	Eggplant, raw
D	usda/11213	Endive, raw
D	usda/11215	Garlic, raw
D	usda/11216	Ginger root, raw
D	usda/11226	Jerusalem-artichokes, raw
D	usda/11233	Kale, raw
D	usda/11238	Mushrooms, shiitake, raw
D	usda/11239	Mushrooms, Chanterelle, raw
D	usda/11240	Mushrooms, morel, raw
D	usda/11241	Kohlrabi, raw
D	usda/11246	Leeks, (bulb and lower leaf-portion), raw
D	usda/11250	Lettuce, butterhead (includes boston and bibb types), raw
D	usda/11251	Lettuce, cos or romaine, raw
D	usda/11252	Lettuce, iceberg (includes crisphead types), raw
D	usda/11253	Lettuce, green leaf, raw
D	usda/11254	Lotus root, raw
D	usda/11260	Mushrooms, white, raw
D	usda/11264	Mushrooms, canned, drained solids
D	usda/11265	Mushrooms, portabella, raw
D	usda/11266	Mushrooms, brown, italian, or crimini, raw
D	usda/11268	Mushrooms, shiitake, dried
D	usda/11270	Mustard greens, raw
D	usda/11278	Okra, raw
D	usda/11282	Onions, raw
D	usda/11284	Onions, dehydrated flakes
D	usda/11291	Onions, spring or scallions (includes tops and bulb), raw
D	usda/11294	Onions, sweet, raw
D	usda/11297	Parsley, fresh
D	usda/11298	Parsnips, raw
D	usda/11300	Peas, edible-podded, raw
D	usda/11304	Peas, green, raw
D	usda/11308	Peas, green (includes baby and lesuer types), canned, drained solids, unprepared
D	usda/11333	Peppers, sweet, green, raw
D	usda/11352	Potatoes, flesh and skin, raw
D	usda/11353	Potatoes, russet, flesh and skin, raw
D	usda/11355	Potatoes, red, flesh and skin, raw
D	usda/11378	Potatoes, mashed, dehydrated, flakes without milk, dry form
D	usda/11413	Potato flour
D	usda/11422	Pumpkin, raw
D	usda/11424	Pumpkin, canned, without salt
D	usda/11427	Purslane, raw
D	usda/11429	Radishes, raw
D	usda/11430	Radishes, oriental, raw
D	usda/11435	Rutabagas, raw
D	usda/11437	Salsify, (vegetable oyster), raw
D	usda/11439	Sauerkraut, canned, solids and liquids
D	usda/11444	Seaweed, irishmoss, raw
D	usda/11450	Soybeans, green, raw
D	usda/11457	Spinach, raw
D	usda/11463	Spinach, frozen, chopped or leaf, unprepared
D	usda/11467	Squash, summer, crookneck and straightneck, raw
D	usda/11475	Squash, summer, scallop, raw
D	usda/11477	Squash, summer, zucchini, includes skin, raw
D	usda/11482	Squash, winter, acorn, raw
D	usda/11485	Squash, winter, butternut, raw
D	usda/11492	Squash, winter, spaghetti, raw
D	usda/11503	Swamp cabbage, (skunk cabbage), raw
D	usda/11507	Sweet potato, raw, unprepared
D	usda/11518	Taro, raw
D	usda/11527	Tomatoes, green, raw
D	usda/11529	Tomatoes, red, ripe, raw, year round average
D	usda/11531	Tomatoes, red, ripe, canned, packed in tomato juice
D	usda/11546	Tomato products, canned, paste, without salt added
D	usda/11547	Tomato products, canned, puree, without salt added
D	usda/11548	Tomato powder
D	usda/11549	Tomato products, canned, sauce
D	usda/11564	Turnips, raw
D	usda/11568	Turnip greens, raw
D	usda/11578	Vegetable juice cocktail, canned
D	usda/11583	Vegetables, mixed, frozen, unprepared
D	usda/11590	Waterchestnuts, chinese, canned, solids and liquids
D	usda/11591	Watercress, raw
D	usda/11601	Yam, raw
D	usda/11603	Yambean (jicama), raw
D	usda/11609	Beets, pickled, canned, solids and liquids
D	usda/11613	Borage, raw
D	usda/11615	Chives, freeze-dried
D	usda/11616	Dock, raw
D	usda/11632	Peppers, jalapeno, canned, solids and liquids
D	usda/11643	Squash, winter, all varieties, raw
D	usda/11655	Carrot juice, canned
D	usda/11657	Potatoes, mashed, home-prepared, whole milk added
D	usda/11663	Seaweed, agar, dried
D	usda/11667	Seaweed, spirulina, dried
D	usda/11670	Peppers, hot chili, green, raw
D	usda/11677	Shallots, raw
D	usda/11693	Tomatoes, crushed, canned
D	usda/11722	Beans, snap, yellow, raw
D	usda/11819	Peppers, hot chili, red, raw
D	usda/11821	Peppers, sweet, red, raw
D	usda/11886	Tomato juice, canned, without salt added
D	usda/11916	Peppers, sweet, red, canned, solids and liquids
D	usda/11935	Catsup
D	usda/11937	Pickles, cucumber, dill or kosher dill
D	usda/11940	Pickles, cucumber, sweet (includes bread and butter pickles)
D	usda/11943	Pimento, canned
D	usda/11945	Pickle relish, sweet
D	usda/11950	Mushrooms, enoki, raw
D	usda/11951	Peppers, sweet, yellow, raw
D	usda/11952	Radicchio, raw
D	usda/11954	Tomatillos, raw
D	usda/11955	Tomatoes, sun-dried
D	usda/11956	Tomatoes, sun-dried, packed in oil, drained
D	usda/11957	Fennel, bulb, raw
D	usda/11959	Arugula, raw
D	usda/11960	Carrots, baby, raw
D	usda/11961	Hearts of palm, canned
D	usda/11962	Peppers, hot chile, sun-dried
D	usda/11963	Nopales, raw
D	usda/11965	Cauliflower, green, raw
D	usda/11972	Lemon grass (citronella), raw
D	usda/11975	Grape leaves, canned
D	usda/11977	Peppers, serrano, raw
D	usda/11978	Peppers, ancho, dried
D	usda/11979	Peppers, jalapeno, raw
D	usda/11980	Peppers, chili, green, canned
D	usda/11982	Peppers, pasilla, dried
D	usda/11983	Pickles, chowchow, with cauliflower onion mustard, sweet
D	usda/11984	Epazote, raw
D	usda/11987	Mushrooms, oyster, raw
D	usda/11988	Fungi, Cloud ears, dried
D	usda/11990	Wasabi, root, raw
D	usda/11993	Mushrooms, maitake, raw
D	usda/12006	Seeds, chia seeds, dried
D	usda/12012	Seeds, hemp seed, hulled
D	usda/12013	Seeds, lotus seeds, dried
D	usda/12014	Seeds, pumpkin and squash seed kernels, dried
D	usda/12023	Seeds, sesame seeds, whole, dried
D	usda/12036	Seeds, sunflower seed kernels, dried
D	usda/12040	Seeds, sunflower seed butter, without salt
D	usda/12061	Nuts, almonds
D	usda/12062	Nuts, almonds, blanched
D	usda/12071	Nuts, almond paste
D	usda/12078	Nuts, brazilnuts, dried, unblanched
D	usda/12085	Nuts, cashew nuts, dry roasted, without salt added
D	usda/12087	Nuts, cashew nuts, raw
D	usda/12088	Nuts, cashew butter, plain, without salt added
D	usda/12097	Nuts, chestnuts, european, raw, unpeeled
D	usda/12100	Nuts, chestnuts, european, dried, peeled
D	usda/12101	Nuts, chestnuts, european, boiled and steamed
D	usda/12104	Nuts, coconut meat, raw
D	usda/12108	Nuts, coconut meat, dried (desiccated), not sweetened
D	usda/12115	Nuts, coconut cream, raw (liquid expressed from grated meat)
D	usda/12118	Nuts, coconut milk, canned (liquid expressed from grated meat and water)
D	usda/12119	Nuts, coconut water (liquid from coconuts)
D	usda/12120	Nuts, hazelnuts or filberts
D	usda/12121	Nuts, hazelnuts or filberts, blanched
D	usda/12130	Nuts, hickorynuts, dried
D	usda/12131	Nuts, macadamia nuts, raw
D	usda/12142	Nuts, pecans
D	usda/12147	Nuts, pine nuts, dried
D	usda/12151	Nuts, pistachio nuts, raw
D	usda/12154	Nuts, walnuts, black, dried
D	usda/12155	Nuts, walnuts, english
D	usda/12174	Seeds, watermelon seed kernels, dried
D	usda/12177	Nuts, coconut meat, dried (desiccated), creamed
D	usda/12179	Nuts, coconut meat, dried (desiccated), sweetened, shredded
D	usda/12195	Nuts, almond butter, plain, without salt added
D	usda/12220	Seeds, flaxseed
D	usda/12698	Seeds, sesame butter, tahini, type of kernels unspecified
D	usda/13227	Beef, shank crosscuts, separable lean only, trimmed to 1/4" fat, choice, raw
D	usda/13321	Beef, variety meats and by-products, heart, raw
D	usda/13323	Beef, variety meats and by-products, kidneys, raw
D	usda/13325	Beef, variety meats and by-products, liver, raw
D	usda/13335	Beef, variety meats and by-products, suet, raw
D	usda/13339	Beef, variety meats and by-products, tongue, raw
D	usda/13341	Beef, variety meats and by-products, tripe, raw
D	usda/13346	Beef, cured, corned beef, brisket, raw
D	usda/13348	Beef, cured, corned beef, canned
D	usda/13350	Beef, cured, dried
D	usda/13355	Beef, cured, pastrami
D	usda/13803	Beef, brisket, whole, separable lean and fat, trimmed to 1/8" fat, all grades, raw
D	usda/13824	Beef, rib, whole (ribs 6-12), separable lean and fat, trimmed to 1/8" fat, all grades, raw
D	usda/13929	Beef, top sirloin, steak, separable lean and fat, trimmed to 1/8" fat, all grades, raw
D	usda/13970	Beef, flank, steak, separable lean and fat, trimmed to 0" fat, all grades, raw
D	usda/14003	Alcoholic beverage, beer, regular, all
D	usda/14034	Alcoholic beverage, creme de menthe, 72 proof
D	usda/14037	Alcoholic beverage, distilled, all (gin, rum, vodka, whiskey) 80 proof
D	usda/14049	Alcoholic beverage, distilled, gin, 90 proof
D	usda/14050	Alcoholic beverage, distilled, rum, 80 proof
D	usda/14051	Alcoholic beverage, distilled, vodka, 80 proof
D	usda/14052	Alcoholic beverage, distilled, whiskey, 86 proof
D	usda/14057	Alcoholic beverage, wine, dessert, sweet
D	usda/14066	Beverages, Protein powder whey based
D	usda/14091	Beverages, almond milk, unsweetened, shelf stable
D	usda/14096	Alcoholic beverage, wine, table, red
D	usda/14106	Alcoholic beverage, wine, table, white
D	usda/14121	Beverages, carbonated, club soda
D	usda/14136	Beverages, carbonated, ginger ale
D	usda/14155	Beverages, carbonated, tonic water
D	usda/14192	Beverages, Cocoa mix, powder
D	usda/14209	Beverages, coffee, brewed, prepared with tap water
D	usda/14210	Beverages, coffee, brewed, espresso, restaurant-prepared
D	usda/14214	Beverages, coffee, instant, regular, powder
D	usda/14223	Beverages, coffee, instant, chicory
D	usda/14242	Cranberry juice cocktail, bottled
D	usda/14253	Alcoholic beverages, wine, rose
D	usda/14278	Beverages, tea, green, brewed, regular
D	usda/14305	Malt beverage, includes non-alcoholic beer
D	usda/14355	Beverages, tea, black, brewed, prepared with tap water
D	usda/14400	Beverages, carbonated, cola, fast-food cola
D	usda/14414	Alcoholic beverage, liqueur, coffee, 53 proof
D	usda/14415	Alcoholic beverage, liqueur, coffee with cream, 34 proof
D	usda/14429	Beverages, water, tap, municipal
D	usda/14536	Alcoholic beverage, wine, dessert, dry
D	usda/14545	Beverages, tea, herb, brewed, chamomile
D	usda/14550	Alcoholic beverage, distilled, all (gin, rum, vodka, whiskey) 86 proof
D	usda/14553	Beverages, Wine, non-alcoholic
D	usda/14639	Beverages, rice milk, unsweetened
D	usda/15001	Fish, anchovy, european, raw
D	usda/15002	Fish, anchovy, european, canned in oil, drained solids
D	usda/15008	Fish, carp, raw
D	usda/15012	Fish, caviar, black and red, granular
D	usda/15015	Fish, cod, Atlantic, raw
D	usda/15018	Fish, cod, Atlantic, dried and salted
D	usda/15023	Fish, mahimahi, raw
D	usda/15025	Fish, eel, mixed species, raw
D	usda/15028	Fish, flatfish (flounder and sole species), raw
D	usda/15031	Fish, grouper, mixed species, raw
D	usda/15033	Fish, haddock, raw
D	usda/15035	Fish, haddock, smoked
D	usda/15036	Fish, halibut, Atlantic and Pacific, raw
D	usda/15039	Fish, herring, Atlantic, raw
D	usda/15041	Fish, herring, Atlantic, pickled
D	usda/15042	Fish, herring, Atlantic, kippered
D	usda/15046	Fish, mackerel, Atlantic, raw
D	usda/15048	Fish, mackerel, jack, canned, drained solids
D	usda/15054	Fish, monkfish, raw
D	usda/15055	Fish, mullet, striped, raw
D	usda/15060	Fish, perch, mixed species, raw
D	usda/15062	Fish, pike, northern, raw
D	usda/15065	Fish, pollock, Atlantic, raw
D	usda/15077	Fish, salmon, chinook, smoked
D	usda/15085	Fish, salmon, sockeye, raw
D	usda/15087	Fish, salmon, sockeye, canned, drained solids
D	usda/15088	Fish, sardine, Atlantic, canned in oil, drained solids with bone
D	usda/15091	Fish, sea bass, mixed species, raw
D	usda/15101	Fish, snapper, mixed species, raw
D	usda/15110	Fish, swordfish, raw
D	usda/15119	Fish, tuna, light, canned in oil, drained solids
D	usda/15121	Fish, tuna, light, canned in water, drained solids
D	usda/15127	Fish, tuna, fresh, yellowfin, raw
D	usda/15129	Fish, turbot, european, raw
D	usda/15132	Fish, whiting, mixed species, raw
D	usda/15138	Crustaceans, crab, alaska king, imitation, made from surimi
D	usda/15139	Crustaceans, crab, blue, raw
D	usda/15141	Crustaceans, crab, blue, canned
D	usda/15145	Crustaceans, crayfish, mixed species, wild, raw
D	usda/15147	Crustaceans, lobster, northern, raw
D	usda/15151	Crustaceans, shrimp, mixed species, cooked, moist heat (may have been previously frozen)
D	usda/15157	Mollusks, clam, mixed species, raw
D	usda/15160	Mollusks, clam, mixed species, canned, drained solids
D	usda/15163	Mollusks, cuttlefish, mixed species, raw
D	usda/15164	Mollusks, mussel, blue, raw
D	usda/15165	Mollusks, mussel, blue, cooked, moist heat
D	usda/15166	Mollusks, octopus, common, raw
D	usda/15171	Mollusks, oyster, Pacific, raw
D	usda/15172	Mollusks, scallop, mixed species, raw
D	usda/15175	Mollusks, squid, mixed species, raw
D	usda/15177	Mollusks, whelk, unspecified, raw
D	usda/15234	Fish, catfish, channel, farmed, raw
D	usda/15236	Fish, salmon, Atlantic, farmed, raw
D	usda/15240	Fish, trout, rainbow, farmed, raw
D	usda/15260	Fish, salmon, pink, canned, drained solids
D	usda/15261	Fish, tilapia, raw
D	usda/15270	Crustaceans, shrimp, raw (not previously frozen)
D	usda/16001	Beans, adzuki, mature seeds, raw
D	usda/16002	Beans, adzuki, mature seeds, cooked, boiled, without salt
D	usda/16006	Beans, baked, canned, plain or vegetarian
D	usda/16014	Beans, black, mature seeds, raw
D	usda/16018	Beans, black turtle, mature seeds, canned
D	usda/16019	Beans, cranberry (roman), mature seeds, raw
D	usda/16021	Beans, cranberry (roman), mature seeds, canned
D	usda/16022	Beans, french, mature seeds, raw
D	usda/16024	Beans, great northern, mature seeds, raw
D	usda/16032	Beans, kidney, red, mature seeds, raw
D	usda/16037	Beans, navy, mature seeds, raw
D	usda/16039	Beans, navy, mature seeds, canned
D	usda/16042	Beans, pinto, mature seeds, raw
D	usda/16049	Beans, white, mature seeds, raw
D	usda/16051	Beans, white, mature seeds, canned
D	usda/16052	Broadbeans (fava beans), mature seeds, raw
D	usda/16055	Carob flour
D	usda/16056	Chickpeas (garbanzo beans, bengal gram), mature seeds, raw
D	usda/16062	Cowpeas, common (blackeyes, crowder, southern), mature seeds, raw
D	usda/16064	Cowpeas, common (blackeyes, crowder, southern), mature seeds, canned, plain
D	usda/16069	Lentils, raw
D	usda/16070	Lentils, mature seeds, cooked, boiled, without salt
D	usda/16071	Lima beans, large, mature seeds, raw
D	usda/16073	Lima beans, large, mature seeds, canned
D	usda/16076	Lupins, mature seeds, raw
D	usda/16080	Mung beans, mature seeds, raw
D	usda/16082	Noodles, chinese, cellophane or long rice (mung beans), dehydrated
D	usda/16083	Mungo beans, mature seeds, raw
D	usda/16085	Peas, green, split, mature seeds, raw
D	usda/16087	Peanuts, all types, raw
D	usda/16089	Peanuts, all types, oil-roasted, with salt
D	usda/16097	Peanut butter, chunk style, with salt
D	usda/16098	Peanut butter, smooth style, with salt
D	usda/16099	Peanut flour, defatted
D	usda/16101	Pigeon peas (red gram), mature seeds, raw
D	usda/16108	Soybeans, mature seeds, raw
D	usda/16112	Miso
D	usda/16113	Natto
D	usda/16114	Tempeh
D	usda/16115	Soy flour, full-fat, raw
D	usda/16117	Soy flour, defatted
D	usda/16120	Soymilk, original and vanilla, unfortified
D	usda/16122	Soy protein isolate
D	usda/16123	Soy sauce made from soy and wheat (shoyu)
D	usda/16124	Soy sauce made from soy (tamari)
D	usda/16126	Tofu, firm, prepared with calcium sulfate and magnesium chloride (nigari)
D	usda/16129	Tofu, fried
D	usda/16130	Okara
D	usda/16144	Lentils, pink or red, raw
D	usda/16145	Beans, kidney, red, mature seeds, canned, drained solids
D	usda/16146	Beans, pinto, canned, drained solids
D	usda/16157	Chickpea flour (besan)
D	usda/16158	Hummus, commercial
D	usda/16214	Vitasoy USA, Organic Nasoya Silken Tofu
D	usda/16358	Chickpeas (garbanzo beans, bengal gram), mature seeds, canned, drained solids
D	usda/16390	Peanuts, all types, dry-roasted, without salt
D	usda/16398	Peanut butter, smooth style, without salt
D	usda/16403	Refried beans, canned, traditional, reduced sodium
D	usda/16424	Soy sauce made from soy and wheat (shoyu), low sodium
D	usda/16427	Tofu, raw, regular, prepared with calcium sulfate
D	usda/17001	Lamb, domestic, composite of trimmed retail cuts, separable lean and fat, trimmed to 1/4" fat, choice, raw
D	usda/17007	Lamb, domestic, foreshank, separable lean and fat, trimmed to 1/4" fat, choice, raw
D	usda/17011	Lamb, domestic, leg, whole (shank and sirloin), separable lean and fat, trimmed to 1/4" fat, choice, raw
D	usda/17023	Lamb, domestic, loin, separable lean and fat, trimmed to 1/4" fat, choice, raw
D	usda/17029	Lamb, domestic, rib, separable lean and fat, trimmed to 1/4" fat, choice, raw
D	usda/17035	Lamb, domestic, shoulder, whole (arm and blade), separable lean and fat, trimmed to 1/4" fat, choice, raw
D	usda/17116	Veal, shoulder, whole (arm and blade), separable lean and fat, raw
D	usda/17142	Veal, ground, raw
D	usda/17158	Game meat, boar, wild, raw
D	usda/17164	Game meat, deer, raw
D	usda/17168	Goat, raw
D	usda/17170	Game meat, horse, raw
D	usda/17177	Game meat, rabbit, domesticated, composite of cuts, raw
D	usda/17180	Game meat, rabbit, wild, raw
D	usda/17195	Lamb, variety meats and by-products, kidneys, raw
D	usda/17199	Lamb, variety meats and by-products, liver, raw
D	usda/17202	Veal, variety meats and by-products, liver, raw
D	usda/17218	Veal, variety meats and by-products, thymus, raw
D	usda/17224	Lamb, ground, raw
D	usda/17276	Veal, shank (fore and hind), separable lean and fat, raw
D	usda/17330	Game meat , bison, ground, raw
D	usda/17343	Game meat, deer, ground, raw
D	usda/17426	Veal, leg, top round, cap off, cutlet, boneless, raw
D	usda/18027	Bread, egg
D	usda/18029	Bread, french or vienna (includes sourdough)
D	usda/18033	Bread, italian
D	usda/18044	Bread, pumpernickel
D	usda/18060	Bread, rye
D	usda/18069	Bread, white, commercially prepared (includes soft bread crumbs)
D	usda/18075	Bread, whole-wheat, commercially prepared
D	usda/18079	Bread crumbs, dry, grated, plain
D	usda/18080	Bread sticks, plain
D	usda/18133	Cake, sponge, commercially prepared
D	usda/18157	Cookies, chocolate wafers
D	usda/18172	Cookies, gingersnaps
D	usda/18173	Cookies, graham crackers, plain or honey (includes cinnamon)
D	usda/18192	Cookies, shortbread, commercially prepared, plain
D	usda/18212	Cookies, vanilla wafers, lower fat
D	usda/18217	Crackers, matzo, plain
D	usda/18226	Crackers, rye, wafers, plain
D	usda/18228	Crackers, saltines (includes oyster, soda, soup)
D	usda/18239	Croissants, butter
D	usda/18242	Croutons, plain
D	usda/18337	Puff pastry, frozen, ready-to-bake
D	usda/18338	Phyllo dough
D	usda/18342	Rolls, dinner, plain, commercially prepared (includes brown-and-serve)
D	usda/18350	Rolls, hamburger or hotdog, plain
D	usda/18363	Tortillas, ready-to-bake or -fry, corn
D	usda/18364	Tortillas, ready-to-bake or -fry, flour, refrigerated
D	usda/18368	Wonton wrappers (includes egg roll wrappers)
D	usda/18369	Leavening agents, baking powder, double-acting, sodium aluminum sulfate
D	usda/18371	Leavening agents, baking powder, low-sodium
D	usda/18372	Leavening agents, baking soda
D	usda/18373	Leavening agents, cream of tartar
D	usda/18374	Leavening agents, yeast, baker's, compressed
D	usda/18375	Leavening agents, yeast, baker's, active dry
D	usda/18408	Bagels, plain, unenriched, without calcium propionate(includes onion, poppy, sesame)
D	usda/18413	Bread, pita, white, unenriched
D	usda/18423	Cookies, ladyfingers, without lemon juice and rind
D	usda/18438	English muffins, plain, unenriched, with calcium propionate (includes sourdough)
D	usda/18973	Focaccia, Italian flatbread, plain
D	usda/19070	Candies, butterscotch
D	usda/19071	Candies, carob, unsweetened
D	usda/19074	Candies, caramels
D	usda/19078	Baking chocolate, unsweetened, squares
D	usda/19080	Candies, semisweet chocolate
D	usda/19087	Candies, white chocolate
D	usda/19095	Ice creams, vanilla
D	usda/19099	Candies, fondant, prepared-from-recipe
D	usda/19103	Candies, fudge, vanilla, prepared-from-recipe
D	usda/19107	Candies, hard
D	usda/19116	Candies, marshmallows
D	usda/19117	Candies, halavah, plain
D	usda/19120	Candies, milk chocolate
D	usda/19125	Chocolate-flavored hazelnut spread
D	usda/19148	Candies, peanut brittle, prepared-from-recipe
D	usda/19165	Cocoa, dry powder, unsweetened
D	usda/19166	Cocoa, dry powder, unsweetened, processed with alkali
D	usda/19172	Gelatin desserts, dry mix
D	usda/19177	Gelatins, dry powder, unsweetened
D	usda/19294	Fruit butters, apple
D	usda/19296	Honey
D	usda/19297	Jams and preserves
D	usda/19300	Jellies
D	usda/19303	Marmalade, orange
D	usda/19304	Molasses
D	usda/19310	Pectin, unsweetened, dry mix
D	usda/19334	Sugars, brown
D	usda/19335	Sugars, granulated
D	usda/19336	Sugars, powdered
D	usda/19340	Sugars, maple
D	usda/19348	Syrups, chocolate, fudge-type
D	usda/19349	Syrups, corn, dark
D	usda/19350	Syrups, corn, light
D	usda/19352	Syrups, malt
D	usda/19353	Syrups, maple
D	usda/19355	Syrups, sorghum
D	usda/19365	Toppings, marshmallow cream
D	usda/19383	Candies, toffee, prepared-from-recipe
D	usda/19400	Snacks, banana chips
D	usda/19719	Jams and preserves, apricot
D	usda/19806	Snacks, popcorn, air-popped (Unsalted)
D	usda/19810	Snacks, potato chips, plain, made with partially hydrogenated soybean oil, unsalted
D	usda/19814	Snacks, pretzels, hard, plain, made with enriched flour, unsalted
D	usda/19816	Snacks, rice cakes, brown rice, plain, unsalted
D	usda/19904	Chocolate, dark, 70-85% cacao solids
D	usda/19908	Sugar, turbinado
D	usda/19912	Sweetener, syrup, agave
D	usda/20001	Amaranth grain, uncooked
D	usda/20003	Arrowroot flour
D	usda/20004	Barley, hulled
D	usda/20005	Barley, pearled, raw
D	usda/20008	Buckwheat
D	usda/20009	Buckwheat groats, roasted, dry
D	usda/20011	Buckwheat flour, whole-groat
D	usda/20012	Bulgur, dry
D	usda/20014	Corn grain, yellow
D	usda/20016	Corn flour, whole-grain, yellow
D	usda/20019	Corn flour, masa, unenriched, white
D	usda/20020	Cornmeal, whole-grain, yellow
D	usda/20027	Cornstarch
D	usda/20028	Couscous, dry
D	usda/20030	Hominy, canned, white
D	usda/20031	Millet, raw
D	usda/20033	Oat bran, raw
D	usda/20035	Quinoa, uncooked
D	usda/20036	Rice, brown, long-grain, raw
D	usda/20038	Oats
D	usda/20040	Rice, brown, medium-grain, raw
D	usda/20054	Rice, white, glutinous, unenriched, uncooked
D	usda/20060	Rice bran, crude
D	usda/20061	Rice flour, white, unenriched
D	usda/20062	Rye grain
D	usda/20063	Rye flour, dark
D	usda/20064	Rye flour, medium
D	usda/20065	Rye flour, light
D	usda/20067	Sorghum grain
D	usda/20068	Tapioca, pearl, dry
D	usda/20069	Triticale
D	usda/20070	Triticale flour, whole-grain
D	usda/20071	Wheat, hard red spring
D	usda/20076	Wheat, durum
D	usda/20077	Wheat bran, crude
D	usda/20078	Wheat germ, crude
D	usda/20080	Wheat flour, whole-grain
D	usda/20082	Wheat flour, white, all-purpose, self-rising, enriched
D	usda/20084	Wheat flour, white, cake, enriched
D	usda/20088	Wild rice, raw
D	usda/20090	Rice flour, brown
D	usda/20091	Pasta, gluten-free, corn, dry
D	usda/20093	Pasta, fresh-refrigerated, plain, as purchased
D	usda/20114	Noodles, japanese, soba, dry
D	usda/20116	Noodles, japanese, somen, dry
D	usda/20124	Pasta, whole-wheat, dry
D	usda/20129	Wheat flours, bread, unenriched
D	usda/20130	Barley flour or meal
D	usda/20131	Barley malt flour
D	usda/20132	Oat flour, partially debranned
D	usda/20133	Rice noodles, dry
D	usda/20140	Spelt, uncooked
D	usda/20142	Teff, uncooked
D	usda/20409	Noodles, egg, dry, unenriched
D	usda/20420	Pasta, dry, unenriched
D	usda/20422	Cornmeal, degermed, unenriched, yellow
D	usda/20444	Rice, white, long-grain, regular, raw, unenriched
D	usda/20446	Rice, white, long-grain, parboiled, unenriched, dry
D	usda/20450	Rice, white, medium-grain, raw, unenriched
D	usda/20452	Rice, white, short-grain, raw, unenriched
D	usda/20466	Semolina, unenriched
D	usda/20481	Wheat flour, white, all-purpose, unenriched
D	usda/20647	Millet flour
D	usda/20648	Sorghum flour, whole-grain
D	usda/20649	Wheat flour, whole-grain, soft wheat
D	usda/23093	Beef, chuck for stew, separable lean and fat, all grades, raw
D	usda/23128	Beef, chuck, short ribs, boneless, separable lean and fat, trimmed to 0" fat, all grades, raw
D	usda/23217	Beef, plate steak, boneless, inside skirt, separable lean and fat, trimmed to 0" fat, all grades, raw
D	usda/23230	Beef, rib eye steak, boneless, lip off, separable lean and fat, trimmed to 0" fat, all grades, raw
D	usda/23327	Beef, round, top round roast, boneless, separable lean and fat, trimmed to 0" fat, all grades, raw
D	usda/23336	Beef, loin, tenderloin roast, boneless, separable lean and fat, trimmed to 0" fat, all grades, raw
D	usda/23339	Beef, loin, top loin steak, boneless, lip off, separable lean and fat, trimmed to 0" fat, all grades, raw
D	usda/23557	Beef, ground, 95% lean meat / 5% fat, raw
D	usda/23572	Beef, ground, 80% lean meat / 20% fat, raw
D	usda/25028	Tortilla chips, yellow, plain, salted
D	usda/27047	Sauce, salsa, verde, ready-to-serve
D	usda/27049	Sauce, tartar, ready-to-serve
D	usda/27064	Wasabi
D	usda/27066	Sauce, horseradish
D	usda/28306	Bread, chapati or roti, plain, commercially prepared
D	usda/28307	Bread, naan, plain, commercially prepared, refrigerated
D	usda/42040	Syrups, grenadine
D	usda/42063	Pectin, liquid
D	usda/42231	Oil, flaxseed, cold pressed
D	usda/42281	Gums, seed gums (includes locust bean, guar)
D	usda/43015	Salad dressing, caesar dressing, regular
D	usda/43046	Candies, nougat, with almonds
D	usda/43125	Beans, liquid from stewed kidney beans
D	usda/43216	Sweeteners, tabletop, fructose, dry, powder
D	usda/43382	Cranberry juice, unsweetened
D	usda/43406	Yeast extract spread
D	usda/43476	Tofu yogurt
D	usda/43479	Alcoholic beverage, rice (sake)
D	usda/48052	Vital wheat gluten
D	usda/90480	Syrup, Cane
D	usda/90560	Mollusks, snail, raw
A	flour	plain-flour,strong-wheat-flour,self-raising-flour,wholemeal-flour
A	white flour	plain-flour,strong-wheat-flour,self-raising-flour
A	corn flour	cornflour,maize-flour
A	tomato purée	tomato-paste,passata
A	tomato puree	tomato-paste,passata
A	pepper	black-pepper,white-pepper,red-pepper,green-pepper
A	bell pepper	red-pepper,green-pepper,yellow-pepper
A	peppers	red-pepper,green-pepper,yellow-pepper,black-pepper
A	coriander	coriander-leaves,coriander-seed
A	ground pepper	black-pepper,white-pepper
A	chilli pepper	fresh-chilli,chilli-powder,cayenne-pepper
A	chili powder	chilli-powder,chili-seasoning
A	oregano	dried-oregano,fresh-oregano
A	marjoram	dried-marjoram,fresh-marjoram
A	savory	dried-savory,summer-savory
A	milk	whole-milk,semi-skimmed-milk,skimmed-milk
A	fresh milk	whole-milk,semi-skimmed-milk,skimmed-milk
A	milk powder	skimmed-milk-powder,whole-milk-powder
A	dried milk	skimmed-milk-powder,whole-milk-powder
A	powdered milk	skimmed-milk-powder,whole-milk-powder
A	cream	single-cream,whipping-cream,double-cream,soured-cream
A	fresh cream	single-cream,whipping-cream,double-cream
A	yogurt	natural-yoghurt,greek-yoghurt,low-fat-yoghurt,fat-free-yoghurt
A	yoghurt	natural-yoghurt,greek-yoghurt,low-fat-yoghurt,fat-free-yoghurt
A	cheese	cheddar,parmesan,mozzarella,cream-cheese,feta
A	hard cheese	cheddar,parmesan,gruyere,pecorino
A	oil	olive-oil,sunflower-oil,rapeseed-oil,vegetable-oil
A	fat	butter,lard,vegetable-shortening,margarine
A	vinegar	white-wine-vinegar,cider-vinegar,red-wine-vinegar,white-vinegar,malt-vinegar
A	wine vinegar	white-wine-vinegar,red-wine-vinegar
A	wine	red-wine,white-wine,rose-wine
A	cider	dry-cider,apple-juice
A	stock	chicken-stock,beef-stock,vegetable-stock,fish-stock
A	broth	chicken-stock,beef-stock,vegetable-stock
A	stock cube	chicken-stock-cube,beef-stock-cube,vegetable-stock-cube
A	bouillon cube	chicken-stock-cube,beef-stock-cube,vegetable-stock-cube
A	rice	long-grain-rice,basmati-rice,short-grain-rice,risotto-rice,brown-rice
A	noodles	egg-noodles,rice-noodles,udon-noodles,soba-noodles
A	bread	white-bread,wholemeal-bread,sourdough-bread,rye-bread
A	yeast	instant-yeast,dried-yeast,fresh-yeast
A	syrup	golden-syrup,maple-syrup,sugar-syrup,corn-syrup
A	nuts	almonds,hazelnuts,walnuts,pecans,mixed-nuts
A	chopped nuts	almonds,hazelnuts,walnuts,pecans,mixed-nuts
A	seeds	sesame-seeds,sunflower-seeds,pumpkin-seeds,poppy-seeds,mixed-seeds
A	beans	green-beans,broad-beans,tinned-kidney-beans,tinned-cannellini-beans,tinned-haricot-beans
A	kidney beans	tinned-kidney-beans,dried-kidney-beans
A	red kidney beans	tinned-kidney-beans,dried-kidney-beans
A	mustard	dijon-mustard,english-mustard,wholegrain-mustard,yellow-mustard
A	chocolate	dark-chocolate,milk-chocolate,white-chocolate
A	cooking chocolate	dark-chocolate,milk-chocolate,cocoa-mass
A	couverture	dark-chocolate,milk-chocolate,white-chocolate
A	coffee	brewed-coffee,espresso,instant-coffee,ground-coffee
A	tea	black-tea,tea-leaves,tea-bag,green-tea
A	tuna	fresh-tuna,tinned-tuna-in-oil,tinned-tuna-in-water
A	tinned tuna	tinned-tuna-in-oil,tinned-tuna-in-water
A	canned tuna	tinned-tuna-in-oil,tinned-tuna-in-water
A	melon	cantaloupe,honeydew-melon,watermelon
A	squash	butternut-squash,pumpkin,acorn-squash,courgette
A	beef	stewing-beef,beef-mince,topside-of-beef,beef-brisket
A	steak	sirloin-steak,rump-steak,ribeye-steak,stewing-beef
A	pork	pork-shoulder,pork-loin,pork-belly,pork-mince
A	minced meat	beef-mince,pork-mince,lamb-mince
A	mince	beef-mince,pork-mince,lamb-mince
A	liver	chicken-liver,lambs-liver,calfs-liver,pigs-liver
A	fish	cod,haddock,salmon,white-fish-fillet
A	cabbage leaves	white-cabbage,savoy-cabbage
A	herbs	parsley,thyme,dried-mixed-herbs,mixed-fresh-herbs
A	pasta sheets	lasagne-sheets,fresh-pasta
A	barley malt	malt-syrup,malt-flour
A	malt	malt-syrup,malt-flour,malted-milk-powder
A	custard sauce	custard,custard-powder
A	gluten-free flour	rice-flour,buckwheat-flour,maize-flour
A	nut flour	ground-almonds,ground-hazelnuts,chestnut-flour
A	sponge	sponge-cake,sponge-fingers
A	pastry	puff-pastry,shortcrust-pastry,filo-pastry
A	biscuits	digestive-biscuits,ginger-biscuits,shortbread,amaretti-biscuits
A	crackers	cream-crackers,matzo,crispbread
A	olives	green-olives,black-olives
A	artichokes	globe-artichoke,jerusalem-artichoke,artichoke-hearts
A	sprout	brussels-sprout,bean-sprouts,alfalfa-sprouts
A	spirit	brandy,rum,whisky,vodka
A	liqueur	orange-liqueur,coffee-liqueur,almond-liqueur
A	soda	bicarbonate-of-soda,sparkling-water,cola
A	fruit juice	orange-juice,apple-juice,red-grape-juice
A	dried beans	dried-kidney-beans,dried-haricot-beans,dried-cannellini-beans,dried-butter-beans
A	chickpeas	tinned-chickpeas,dried-chickpeas
A	garbanzo beans	tinned-chickpeas,dried-chickpeas
A	black beans	tinned-black-beans,dried-black-beans
A	cannellini beans	tinned-cannellini-beans,dried-cannellini-beans
A	white beans	tinned-cannellini-beans,tinned-haricot-beans,dried-cannellini-beans,dried-haricot-beans
A	haricot beans	tinned-haricot-beans,dried-haricot-beans
A	navy beans	tinned-haricot-beans,dried-haricot-beans
A	butter beans	tinned-butter-beans,dried-butter-beans
A	butterbeans	tinned-butter-beans,dried-butter-beans
A	lima beans	tinned-butter-beans,dried-butter-beans,fresh-lima-beans
A	borlotti beans	tinned-borlotti-beans,dried-borlotti-beans
A	cranberry beans	tinned-borlotti-beans,dried-borlotti-beans
A	pinto beans	tinned-pinto-beans,dried-pinto-beans
A	black-eyed beans	tinned-black-eyed-beans,dried-black-eyed-beans
A	black-eyed peas	tinned-black-eyed-beans,dried-black-eyed-beans
A	adzuki beans	tinned-adzuki-beans,dried-adzuki-beans
A	tortillas	flour-tortillas,corn-tortillas
F	plain flour	all-purpose flour;all purpose white flour;plain white flour;plain wheat flour;white wheat flour;household flour;white household flour;wheat flour;unbleached flour;unbleached all-purpose flour;AP flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	364 10.33 0.98 0.155 - 0.087 0.413 76.31 0.27 - 2.7 0.0 0 2 107 15 1.17 0.0 11.92 0.47	- 120 122.75 142 usda/20481,mill,ci,au250,school,cakebible;dipped 141.747615625 cakebible;sifted 113.3980925 cakebible;spooned 120.48547328125 cakebible		usda/20481
F	strong wheat flour	strong flour;strong white flour;bread flour;white bread flour;strong bread flour;strong white bread flour;strong plain flour;high-gluten flour;very strong flour;very strong white flour;extra strong flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	361 11.98 1.66 0.244 - 0.140 0.727 72.53 0.31 - 2.4 0.0 0 2 100 15 0.90 0.0 13.36 0.47	- 120 128.63642703125 155.9223771875 usda/20129,mill,bba,school,cakebible;dipped 137 146.46118859375 155.9223771875 usda/20129,cakebible;sifted 120.48547328125 cakebible;spooned 127.5728540625 cakebible		usda/20129
F	self-raising flour	self-rising flour;white self-raising flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	354 9.89 0.97 0.154 - 0.086 0.410 74.22 0.22 - 2.7 0.0 0 1193 124 338 4.67 0.0 10.59 4.33	- 125 usda/20082		usda/20082
F	wholemeal flour	whole wheat flour;whole-grain wheat flour;wholewheat flour;wholemeal wheat flour;strong wholemeal flour;strong wholemeal bread flour;wholemeal bread flour;stone-ground wholemeal flour;graham flour;whole wheat bread flour;atta;atta flour;plain wholemeal flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	340 13.21 2.50 0.430 - 0.283 1.167 71.97 0.41 57.77 10.7 0.0 0 2 363 34 3.60 0.0 10.74 1.58	- 113 124.85 156 usda/20080,mill,ci,bba		usda/20080
F	wholemeal pastry flour	whole wheat pastry flour;soft wholemeal flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	332 9.61 1.95 0.430 - 0.283 1.167 74.48 1.02 - 13.1 - 0 3 394 33 3.71 0.0 12.42 1.53	- 105 115 125 practice		usda/20649
F	cake flour	soft flour;soft wheat flour;sponge flour;white cake flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	362 8.20 0.86 0.127 - 0.073 0.379 78.03 0.31 - 1.7 0.0 0 2 105 14 7.32 0.0 12.51 0.39	- 113 120 137 usda/20084,mill,ci,school,cakebible;dipped 127.5728540625 132.28642703125 137 usda/20084,cakebible;sifted 99.2233309375 cakebible;spooned 113.3980925 cakebible		usda/20084
F	pastry flour	soft white flour;plain pastry flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	362 8.20 0.86 0.127 - 0.073 0.379 78.03 0.31 - 1.7 0.0 0 2 105 14 7.32 0.0 12.51 0.39	- 137 usda/20084;dipped 137 usda/20084		usda/20084/stand-in
F	00 flour	tipo 00 flour;double zero flour;pizza flour;pasta flour;00 pasta flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	364 10.33 0.98 0.155 - 0.087 0.413 76.31 0.27 - 2.7 0.0 0 2 107 15 1.17 0.0 11.92 0.47	- 116 120.5 125 usda/20481,mill		usda/20481/stand-in
F	brown wheat flour	brown flour;brown bread flour;strong brown flour;85 % extraction flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	340 13.21 2.50 0.430 - 0.283 1.167 71.97 0.41 57.77 10.7 0.0 0 2 363 34 3.60 0.0 10.74 1.58	- 115 127.5 140 practice		usda/20080/stand-in
F	malted flour	malted grain flour;malted wheat flour	flour	wheat flour	wheat,barley	raw-flour,vegan,vegetarian	100	340 13.21 2.50 0.430 - 0.283 1.167 71.97 0.41 57.77 10.7 0.0 0 2 363 34 3.60 0.0 10.74 1.58	- 115 127.5 140 practice		usda/20080/stand-in
F	semolina	fine semolina;coarse semolina;durum semolina;semolina flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	360 12.68 1.05 0.150 - 0.124 0.430 72.83 - - 3.9 0.0 0 1 186 17 1.23 0.0 12.67 0.77	- 167 usda/20466		usda/20466
F	durum wheat flour	durum flour;semola rimacinata;rimacinata;remilled semolina	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	360 12.68 1.05 0.150 - 0.124 0.430 72.83 - - 3.9 0.0 0 1 186 17 1.23 0.0 12.67 0.77	- 167 usda/20466		usda/20466/stand-in
F	spelt flour	wholemeal spelt flour;whole spelt flour;whole-grain spelt flour	flour	spelt flour	spelt,wheat	raw-flour,vegan,vegetarian	100	338 14.57 2.43 0.406 - 0.445 1.258 70.19 6.82 53.92 10.7 - 0 8 388 27 4.44 - 11.02 1.78	- 100 115 130 practice		usda/20140/stand-in
F	white spelt flour	light spelt flour	flour	spelt flour	spelt,wheat	raw-flour,vegan,vegetarian	100	364 10.33 0.98 0.155 - 0.087 0.413 76.31 0.27 - 2.7 0.0 0 2 107 15 1.17 0.0 11.92 0.47	- 100 115 130 practice		usda/20481/stand-in
F	einkorn flour	wholemeal einkorn flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	340 13.21 2.50 0.430 - 0.283 1.167 71.97 0.41 57.77 10.7 0.0 0 2 363 34 3.60 0.0 10.74 1.58	- 95 107.5 120 practice		usda/20080/stand-in
F	emmer flour	wholemeal emmer flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	340 13.21 2.50 0.430 - 0.283 1.167 71.97 0.41 57.77 10.7 0.0 0 2 363 34 3.60 0.0 10.74 1.58	- 105 117.5 130 practice		usda/20080/stand-in
F	khorasan flour	khorasan wheat flour;wholemeal khorasan flour	flour	wheat flour	wheat	raw-flour,vegan,vegetarian	100	340 13.21 2.50 0.430 - 0.283 1.167 71.97 0.41 57.77 10.7 0.0 0 2 363 34 3.60 0.0 10.74 1.58	- 115 122.5 130 practice		usda/20080/stand-in
F	whole rye flour	wholemeal rye flour;dark rye flour;whole-grain rye flour;pumpernickel flour;rye meal;coarse rye flour;fine whole rye flour;pumpernickel meal	flour	rye flour	rye	raw-flour,vegan,vegetarian	100	325 15.91 2.22 0.269 0.000 0.284 1.046 68.63 2.31 - 23.8 0.0 0 2 717 37 4.97 0.0 10.75 2.50	- 106 117 128 usda/20063,mill		usda/20063
F	rye flour	medium rye flour	flour	rye flour	rye	raw-flour,vegan,vegetarian	100	349 10.88 1.52 0.180 0.000 0.189 0.695 75.43 1.10 - 11.8 0.0 0 2 374 24 2.54 0.0 10.97 1.20	- 102 102.5 103 usda/20064,mill		usda/20064
F	light rye flour	white rye flour;fine rye flour	flour	rye flour	rye	raw-flour,vegan,vegetarian	100	357 9.82 1.33 0.150 0.000 0.158 0.584 76.68 0.93 - 8.0 0.0 0 2 224 13 0.91 0.0 11.40 0.78	- 102 usda/20065		usda/20065
F	triticale flour		flour	other flour	triticale,wheat,rye	raw-flour,vegan,vegetarian	100	338 13.18 1.81 0.318 - 0.183 0.794 73.14 - - 14.6 0.0 0 2 466 35 2.59 0.0 10.01 1.85	- 130 usda/20070		usda/20070
F	barley flour	barley meal;wholemeal barley flour;bere meal	flour	other flour	barley	raw-flour,vegan,vegetarian	100	345 10.50 1.60 0.335 - 0.205 0.771 74.52 0.80 - 10.1 0.0 0 4 309 32 2.68 0.0 12.11 1.28	- 85 116.5 148 usda/20130,mill		usda/20130
F	malt flour	barley malt flour;malted barley flour;diastatic malt;diastatic malt powder;diastatic malt flour	flour	other flour	barley	raw-flour,vegan,vegetarian	100	361 10.28 1.84 0.386 - 0.254 0.953 78.30 0.80 - 7.1 0.0 0 11 224 37 4.71 0.0 8.21 1.37	- 162 usda/20131		usda/20131
F	oat flour		flour	other flour	oats	raw-flour,vegan,vegetarian	100	404 14.66 9.12 1.607 - 2.866 3.329 65.70 0.80 - 6.5 0.0 0 19 371 55 4.00 0.0 8.55 1.97	- 104 usda/20132		usda/20132
F	oatmeal	medium oatmeal;fine oatmeal;ground oats	flour,cereal	other flour	oats	raw-flour,vegan,vegetarian	100	379 13.15 6.52 1.110 - 1.980 2.300 67.70 0.99 57.92 10.1 0.0 0 6 362 52 4.25 0.0 10.84 1.77	- 81 5997/74 3000/37 usda/08120		usda/08120/stand-in
F	rice flour	white rice flour;ground rice	flour	other flour		raw-flour,vegan,vegetarian	100	366 5.95 1.42 0.386 - 0.442 0.379 80.13 0.12 - 2.4 0.0 0 0 76 10 0.35 0.0 11.89 0.61	- 158 usda/20061		usda/20061
F	brown rice flour	wholegrain rice flour	flour	other flour		raw-flour,vegan,vegetarian	100	363 7.23 2.78 0.557 - 1.008 0.996 76.48 0.66 - 4.6 0.0 0 8 289 11 1.98 0.0 11.97 1.54	- 158 usda/20090		usda/20090
F	glutinous rice flour	sweet rice flour;mochiko;sticky rice flour	flour	other flour		raw-flour,vegan,vegetarian	100	366 5.95 1.42 0.386 - 0.442 0.379 80.13 0.12 - 2.4 0.0 0 0 76 10 0.35 0.0 11.89 0.61	- 115 137.5 160 practice		usda/20061/stand-in
F	buckwheat flour	wholemeal buckwheat flour;whole buckwheat flour	flour	other flour	buckwheat	raw-flour,vegan,vegetarian	100	335 12.62 3.10 0.677 - 0.949 0.949 70.59 2.60 - 10.0 0.0 0 11 577 41 4.06 0.0 11.15 2.54	- 120 usda/20011		usda/20011
F	maize flour	maize meal flour;finely ground maize;yellow corn flour;whole-grain corn flour	flour	other flour		raw-flour,vegan,vegetarian	100	361 6.93 3.86 0.543 - 1.018 1.759 76.85 0.64 - 7.3 0.0 0 5 315 7 2.38 0.0 10.91 1.45	- 117 usda/20016		usda/20016
F	masa harina	masa flour;corn masa flour;masa	flour	other flour		raw-flour,vegan,vegetarian	100	363 8.46 3.69 0.532 - 0.997 1.724 76.59 1.61 66.00 6.4 0.0 0 5 262 138 1.47 0.0 9.79 1.48	- 114 usda/20019		usda/20019
F	cornmeal	yellow cornmeal;maize meal;stone-ground cornmeal;medium cornmeal;coarse cornmeal;fine cornmeal;white cornmeal;corn meal	flour	other flour		raw-flour,vegan,vegetarian	100	362 8.12 3.59 0.505 - 0.948 1.638 76.89 0.64 - 7.3 0.0 0 35 287 6 3.45 0.0 10.26 1.13	- 122 138 170.7 usda/20020,mill,bba		usda/20020
F	polenta	fine polenta;coarse polenta;polenta meal;degermed cornmeal;quick-cook polenta;instant polenta	flour,cereal	other flour		raw-flour,vegan,vegetarian	100	370 7.11 1.75 0.220 0.000 0.390 0.828 79.45 1.61 73.30 3.9 0.0 0 7 142 3 1.10 0.0 11.18 0.51	- 157 usda/20422		usda/20422
F	grits	corn grits;hominy grits	cereal	other flour		raw-flour,vegan,vegetarian	100	371 8.80 1.20 0.155 - 0.300 0.516 79.60 0.64 - 1.6 0.0 0 1 137 2 1.00 - 10.00 0.40	- 155.2 155.6 156 usda/08160		usda/08160
F	millet flour		flour	other flour		raw-flour,vegan,vegetarian	100	382 10.75 4.25 0.536 0.002 0.924 2.618 75.12 1.66 69.88 3.5 - - 4 224 14 3.94 - 8.67 1.21	- 119 usda/20647		usda/20647
F	sorghum flour	jowar flour;whole sorghum flour	flour	other flour		raw-flour,vegan,vegetarian	100	359 8.43 3.34 0.528 0.004 0.943 1.403 76.64 1.94 68.00 6.6 - - 3 324 12 3.14 - 10.26 1.32	- 121 usda/20648		usda/20648
F	teff flour		flour	other flour		raw-flour,vegan,vegetarian	100	367 13.30 2.38 0.449 - 0.589 1.071 73.13 1.84 36.56 8.0 - - 12 427 180 7.63 - 8.82 2.37	- 135 147.5 160 practice		usda/20142/stand-in
F	amaranth flour		flour	other flour		raw-flour,vegan,vegetarian	100	371 13.56 7.02 1.459 - 1.685 2.778 65.25 1.69 57.27 6.7 0.0 0 4 508 159 7.61 0.0 11.29 2.88	- 103 mill		usda/20001/stand-in
F	quinoa flour		flour	other flour		raw-flour,vegan,vegetarian	100	368 14.12 6.07 0.706 - 1.613 3.292 64.16 - 52.22 7.0 - 0 5 563 47 4.57 0.0 13.28 2.38	- 100 107.5 115 practice		usda/20035/stand-in
F	chickpea flour	gram flour;besan;garbanzo flour;garbanzo bean flour	pulse	pulse flour		raw-flour,vegan,vegetarian	100	387 22.39 6.69 0.693 0.000 1.504 2.983 57.82 10.85 - 10.8 0.0 0 64 846 45 4.86 0.0 10.28 2.82	- 92 usda/16157		usda/16157
F	soya flour	soy flour;full-fat soya flour	pulse	pulse flour	soybeans	raw-flour,vegan,vegetarian	100	434 37.81 20.65 2.987 0.000 4.561 11.657 31.92 7.50 - 9.6 0.0 0 13 2515 206 6.37 0.0 5.16 4.46	- 83.2 83.6 84 usda/16115		usda/16115
F	defatted soya flour	defatted soy flour	pulse	pulse flour	soybeans	raw-flour,vegan,vegetarian	100	327 51.46 1.22 0.136 0.000 0.208 0.533 33.92 16.42 - 17.5 0.0 0 20 2384 241 9.24 0.0 7.25 6.15	- 105 105.3 105.6 usda/16117		usda/16117
F	lupin flour	lupine flour	pulse	pulse flour	lupin	raw-flour,vegan,vegetarian	100	371 36.17 9.74 1.156 0.000 3.940 2.439 40.37 - - 18.9 0.0 0 15 1013 176 4.36 0.0 10.44 3.28	- 100 115 130 practice		usda/16076/stand-in
F	pea flour		pulse	pulse flour		raw-flour,vegan,vegetarian	100	352 23.82 1.16 0.161 0.000 0.242 0.495 63.74 8.00 - 25.5 0.0 0 15 823 37 4.82 0.0 8.62 2.66	- 110 122.5 135 practice		usda/16085/stand-in
F	peanut flour		pulse	pulse flour	peanuts	raw-flour,vegan,vegetarian	100	327 52.20 0.55 0.063 0.000 0.225 0.143 34.70 8.22 - 15.8 0.0 0 180 1290 140 2.10 0.0 7.80 4.75	- 60 usda/16099		usda/16099
F	lentil flour		pulse	pulse flour		raw-flour,vegan,vegetarian	100	352 24.63 1.06 0.154 0.000 0.193 0.526 63.35 2.03 49.90 10.7 0.0 0 6 677 35 6.51 0.0 8.26 2.71	- 110 125 140 practice		usda/16069/stand-in
F	fava bean flour	broad bean flour	pulse	pulse flour		raw-flour,vegan,vegetarian	100	341 26.12 1.53 0.254 0.000 0.303 0.627 58.29 5.70 - 25.0 0.0 0 13 1062 103 6.70 0.0 10.98 3.08	- 110 122.5 135 practice		usda/16052/stand-in
F	carob powder	carob flour		pulse flour		vegan,vegetarian	100	222 4.62 0.65 0.090 0.000 0.197 0.216 88.88 49.08 - 39.8 0.0 0 35 827 348 2.94 0.0 3.58 2.27	- 96 99.5 103 usda/16055		usda/16055
F	ground almonds	almond meal;almond flour;blanched almond flour;fine almond flour	nut	nut flour	almond	vegan,vegetarian	100	590 21.40 52.52 3.953 0.019 33.415 12.368 18.67 4.63 1.00 9.9 0.0 0 19 659 236 3.28 0.0 4.51 2.91	- 84 95 96 mill,practice;whole 145 usda/12062		usda/12062/stand-in
F	ground hazelnuts	hazelnut flour;hazelnut meal	nut	nut flour	hazelnut	vegan,vegetarian	100	628 14.95 60.75 4.464 - 45.652 7.920 16.70 4.34 0.48 9.7 0.0 0 0 680 114 4.70 0.0 5.31 2.29	- 115 125 135 usda/12120;chopped 115 usda/12120;ground 75 usda/12120;whole 135 usda/12120	-/- 1.4 usda/12120	usda/12120/stand-in
F	chestnut flour		nut	nut flour	chestnut	vegan,vegetarian	100	369 5.01 3.91 0.736 - 1.349 1.546 78.43 - - - - 0 37 991 64 2.39 0.0 9.00 3.64	- 95 107.5 120 practice		usda/12100/stand-in
F	coconut flour		nut	nut flour	coconut	vegan,vegetarian	100		- 110 120 130 practice		
F	cornflour	cornstarch;corn starch;maize starch	starch	starch		vegan,vegetarian	100	381 0.26 0.05 0.009 - 0.016 0.025 91.27 0.00 - 0.9 0.0 0 9 3 2 0.47 0.0 8.32 0.09	- 112 120 128 usda/20027,mill,cakebible		usda/20027
F	potato starch	potato flour starch;farina potato starch	starch	starch		vegan,vegetarian		333 0.1 0.1 - - - - 83 0 - - - - - - - - - 16	- 150 170 190 practice		memory
F	potato flour		starch	starch		vegan,vegetarian	100	357 6.90 0.34 0.090 0.000 0.008 0.150 83.10 3.52 - 5.9 0.0 0 55 1001 65 1.38 0.0 6.52 3.14	- 160 usda/11413		usda/11413
F	tapioca starch	tapioca flour;cassava starch	starch	starch		vegan,vegetarian	100	358 0.19 0.02 0.005 - 0.005 0.003 88.69 3.35 - 0.9 0.0 0 1 11 20 1.58 0.0 10.99 0.11	- 113 119 125 practice		usda/20068/stand-in
F	arrowroot	arrowroot powder;arrowroot flour;arrowroot starch	starch	starch		vegan,vegetarian	100	357 0.30 0.10 0.019 - 0.002 0.045 88.15 - - 3.4 - 0 2 11 40 0.33 0.0 11.37 0.08	- 128 usda/20003		usda/20003
F	wheat starch		starch	starch	wheat	vegan,vegetarian	100	381 0.26 0.05 0.009 - 0.016 0.025 91.27 0.00 - 0.9 0.0 0 9 3 2 0.47 0.0 8.32 0.09	- 110 120 130 practice		usda/20027/stand-in
F	rice starch		starch	starch		vegan,vegetarian	100	381 0.26 0.05 0.009 - 0.016 0.025 91.27 0.00 - 0.9 0.0 0 9 3 2 0.47 0.0 8.32 0.09	- 120 135 150 practice		usda/20027/stand-in
F	tapioca pearls	tapioca;pearl tapioca;small pearl tapioca;quick-cooking tapioca;sago	starch	starch		vegan,vegetarian	100	358 0.19 0.02 0.005 - 0.005 0.003 88.69 3.35 - 0.9 0.0 0 1 11 20 1.58 0.0 10.99 0.11	- 152 usda/20068		usda/20068
F	cassava flour	manioc flour;gari	starch	starch		vegan,vegetarian					
F	custard powder	vanilla custard powder	starch	starch	?	vegan,vegetarian			- 115 122.5 130 practice		
F	rolled oats	porridge oats;jumbo oats;old-fashioned oats;old-fashioned rolled oats;oat flakes;oats;quick oats;quick-cooking oats;whole rolled oats	cereal	grain,flake	oats	vegan,vegetarian	100	379 13.15 6.52 1.110 - 1.980 2.300 67.70 0.99 57.92 10.1 0.0 0 6 362 52 4.25 0.0 10.84 1.77	- 81 6293/74 113.4 usda/08120,mill,bba		usda/08120
F	oat groats	whole oats;whole oat groats	cereal	grain	oats	vegan,vegetarian	100	389 16.89 6.90 1.217 - 2.178 2.535 66.27 - - 10.6 0.0 0 2 429 54 4.72 0.0 8.22 1.72	- 156 usda/20038		usda/20038
F	pinhead oatmeal	steel-cut oats;coarse oatmeal;irish oatmeal	cereal	grain	oats	vegan,vegetarian	100	389 16.89 6.90 1.217 - 2.178 2.535 66.27 - - 10.6 0.0 0 2 429 54 4.72 0.0 8.22 1.72	- 156 usda/20038		usda/20038/stand-in
F	oat bran	oatbran	cereal	grain	oats	vegan,vegetarian	100	246 17.30 7.03 1.328 - 2.376 2.766 66.22 1.45 - 15.4 0.0 0 4 566 58 5.41 0.0 6.55 2.89	- 94 usda/20033		usda/20033
F	pearl barley	pearled barley;barley	cereal	grain	barley	vegan,vegetarian	100	352 9.91 1.16 0.244 - 0.149 0.560 77.72 0.80 - 15.6 0.0 0 9 280 29 2.50 0.0 10.09 1.11	- 200 206.5 213 usda/20005,mill		usda/20005
F	pot barley	hulled barley;whole barley;hull-less barley;barley groats	cereal	grain	barley	vegan,vegetarian	100	354 12.48 2.30 0.482 - 0.295 1.108 73.48 0.80 - 17.3 0.0 0 12 452 33 3.60 0.0 9.44 2.29	- 184 usda/20004		usda/20004
F	barley flakes	rolled barley	cereal	grain,flake	barley	vegan,vegetarian	100	352 9.91 1.16 0.244 - 0.149 0.560 77.72 0.80 - 15.6 0.0 0 9 280 29 2.50 0.0 10.09 1.11	- 92 mill		usda/20005/stand-in
F	malted wheat flakes	malted wheat;malt flakes	cereal	grain,flake	wheat,barley	vegan,vegetarian	100	329 15.40 1.92 0.314 - 0.303 0.765 68.03 0.41 - 12.2 0.0 0 2 340 25 3.60 0.0 12.76 1.89	- 85 97.5 110 practice		usda/20071/stand-in
F	bulgur wheat	bulgur;bulghur;bulghur wheat;burghul;cracked wheat bulgur;fine bulgur;coarse bulgur	cereal	grain	wheat	vegan,vegetarian	100	342 12.29 1.33 0.232 - 0.173 0.541 75.87 0.41 - 12.5 0.0 0 17 410 35 2.46 0.0 9.00 1.51	- 140 usda/20012		usda/20012
F	cracked wheat	kibbled wheat;chopped wheat;cut wheat	cereal	grain	wheat	vegan,vegetarian	100	329 15.40 1.92 0.314 - 0.303 0.765 68.03 0.41 - 12.2 0.0 0 2 340 25 3.60 0.0 12.76 1.89	- 192 usda/20071		usda/20071/stand-in
F	wheat berries	wheat grain;whole wheat grain;whole wheat berries;wheatberries	cereal	grain	wheat	vegan,vegetarian	100	329 15.40 1.92 0.314 - 0.303 0.765 68.03 0.41 - 12.2 0.0 0 2 340 25 3.60 0.0 12.76 1.89	- 192 usda/20071		usda/20071
F	wheat flakes	rolled wheat	cereal	grain,flake	wheat	vegan,vegetarian	100	329 15.40 1.92 0.314 - 0.303 0.765 68.03 0.41 - 12.2 0.0 0 2 340 25 3.60 0.0 12.76 1.89	- 85 97.5 110 practice		usda/20071/stand-in
F	durum wheat	durum wheat grain	cereal	grain	wheat	vegan,vegetarian	100	339 13.68 2.47 0.454 - 0.344 0.978 71.13 - - - - 0 2 431 34 3.52 0.0 10.94 1.78	- 192 usda/20076		usda/20076
F	freekeh	frikeh;green wheat	cereal	grain	wheat	vegan,vegetarian			- 160 172.5 185 practice		
F	farro	emmer;pearled farro;emmer grain	cereal	grain	wheat,spelt	vegan,vegetarian	100	338 14.57 2.43 0.406 - 0.445 1.258 70.19 6.82 53.92 10.7 - 0 8 388 27 4.44 - 11.02 1.78	- 165 182.5 200 practice		usda/20140/stand-in
F	spelt grain	spelt berries;pearled spelt;whole spelt;spelt	cereal	grain	spelt,wheat	vegan,vegetarian	100	338 14.57 2.43 0.406 - 0.445 1.258 70.19 6.82 53.92 10.7 - 0 8 388 27 4.44 - 11.02 1.78	- 174 usda/20140		usda/20140
F	couscous	plain couscous;fine couscous;medium couscous;dry couscous	cereal	grain	wheat	vegan,vegetarian	100	376 12.76 0.64 0.117 - 0.089 0.252 77.43 - - 5.0 - 0 10 166 24 1.08 0.0 8.56 0.62	- 173 usda/20028		usda/20028
F	giant couscous	pearl couscous;israeli couscous;moghrabieh;fregola	cereal	grain	wheat	vegan,vegetarian	100	376 12.76 0.64 0.117 - 0.089 0.252 77.43 - - 5.0 - 0 10 166 24 1.08 0.0 8.56 0.62	- 150 162.5 175 practice		usda/20028/stand-in
F	wheat bran	bran;coarse bran	cereal	grain	wheat	vegan,vegetarian	100	216 15.55 4.25 0.630 - 0.637 2.212 64.51 0.41 - 42.8 0.0 0 2 1182 73 10.57 0.0 9.89 5.79	- 58 usda/20077		usda/20077
F	wheatgerm	wheat germ	cereal	grain	wheat	vegan,vegetarian	100	360 23.15 9.72 1.665 - 1.365 6.010 51.80 - - 13.2 - 0 12 892 39 6.26 0.0 11.12 4.21	- 115 usda/20078		usda/20078
F	farina	cream of wheat-style cereal	cereal	grain	wheat	vegan,vegetarian	100	369 10.60 0.50 0.080 - 0.060 0.220 78.00 - - 1.9 0.0 0 3 94 14 1.50 - 10.50 0.40	- 174.4 175.2 176 usda/08172		usda/08172
F	rye grain	rye berries;whole rye;whole rye grain	cereal	grain	rye	vegan,vegetarian	100	338 10.34 1.63 0.197 0.000 0.208 0.767 75.86 0.98 - 15.1 0.0 0 2 510 24 2.63 0.0 10.60 1.57	- 169 usda/20062		usda/20062
F	cracked rye	kibbled rye;chopped rye;rye chops;coarse cracked rye;cut rye	cereal	grain	rye	vegan,vegetarian	100	338 10.34 1.63 0.197 0.000 0.208 0.767 75.86 0.98 - 15.1 0.0 0 2 510 24 2.63 0.0 10.60 1.57	- 169 usda/20062		usda/20062/stand-in
F	rye flakes	rolled rye	cereal	grain,flake	rye	vegan,vegetarian	100	338 10.34 1.63 0.197 0.000 0.208 0.767 75.86 0.98 - 15.1 0.0 0 2 510 24 2.63 0.0 10.60 1.57	- 90 102.5 115 practice		usda/20062/stand-in
F	triticale	triticale grain	cereal	grain	triticale,wheat,rye	vegan,vegetarian	100	336 13.05 2.09 0.366 - 0.211 0.913 72.13 - - - - 0 5 332 37 2.57 0.0 10.51 2.23	- 192 usda/20069		usda/20069
F	buckwheat	buckwheat groats;whole buckwheat;raw buckwheat;hulled buckwheat	cereal	grain	buckwheat	vegan,vegetarian	100	343 13.25 3.40 0.741 - 1.040 1.039 71.50 - - 10.0 0.0 0 1 460 18 2.20 0.0 9.75 2.10	- 170 usda/20008		usda/20008
F	kasha	roasted buckwheat;roasted buckwheat groats	cereal	grain	buckwheat	vegan,vegetarian	100	346 11.73 2.71 0.591 - 0.828 0.828 74.95 - - 10.3 0.0 0 11 320 17 2.47 0.0 8.41 2.20	- 164 usda/20009		usda/20009
F	millet	hulled millet;whole millet;pearl millet	cereal	grain		vegan,vegetarian	100	378 11.02 4.22 0.723 - 0.773 2.134 72.85 - - 8.5 - 0 5 195 8 3.01 0.0 8.67 3.25	- 200 usda/20031		usda/20031
F	sorghum	sorghum grain	cereal	grain		vegan,vegetarian	100	329 10.62 3.46 0.610 0.005 1.131 1.558 72.09 2.53 - 6.7 - 0 2 363 13 3.36 0.0 12.40 1.43	- 192 usda/20067		usda/20067
F	teff	teff grain;whole teff	cereal	grain		vegan,vegetarian	100	367 13.30 2.38 0.449 - 0.589 1.071 73.13 1.84 36.56 8.0 - - 12 427 180 7.63 - 8.82 2.37	- 193 usda/20142		usda/20142
F	amaranth	amaranth grain;amaranth seeds	cereal	grain		vegan,vegetarian	100	371 13.56 7.02 1.459 - 1.685 2.778 65.25 1.69 57.27 6.7 0.0 0 4 508 159 7.61 0.0 11.29 2.88	- 193 usda/20001		usda/20001
F	quinoa	white quinoa;red quinoa;black quinoa;quinoa grain;tricolour quinoa;mixed quinoa	cereal	grain		vegan,vegetarian	100	368 14.12 6.07 0.706 - 1.613 3.292 64.16 - 52.22 7.0 - 0 5 563 47 4.57 0.0 13.28 2.38	- 170 usda/20035		usda/20035
F	popping corn	popcorn kernels;popping maize;unpopped popcorn	cereal	grain		vegan,vegetarian	100	365 9.42 4.74 0.667 - 1.251 2.163 74.26 0.64 - 7.3 0.0 0 35 287 7 2.71 0.0 10.37 1.20	- 180 190 200 practice		usda/20014/stand-in
F	hominy	tinned hominy;canned hominy	cereal	grain		vegan,vegetarian	100	72 1.48 0.88 0.123 - 0.231 0.399 14.26 1.82 - 2.5 0.0 0 345 9 10 0.62 0.0 82.53 0.86	- 165 usda/20030		usda/20030
F	wild rice		cereal	grain		vegan,vegetarian	100	357 14.73 1.08 0.156 - 0.159 0.676 74.90 2.50 - 6.2 0.0 0 7 427 21 1.96 0.0 7.76 1.53	- 160 usda/20088		usda/20088
F	corn flakes	cornflakes	cereal	grain	?	vegan,vegetarian					
F	puffed rice	puffed rice cereal;rice pops;crisped rice;crispy rice cereal	cereal	grain		vegan,vegetarian	100	402 6.30 0.50 0.130 - - - 89.80 - - 1.7 - 0 3 113 6 31.70 - 3.00 0.40	- 14 usda/08156		usda/08156
F	bran flakes		cereal	grain	?wheat	vegan,vegetarian					
F	muesli		cereal	grain	?	vegan,vegetarian					
F	granola		cereal	grain	?	vegan,vegetarian					
F	long-grain rice	white rice;long-grain white rice;white long-grain rice;easy-cook rice;patna rice;american long-grain rice;uncooked white rice	cereal	rice		vegan,vegetarian,cooked-rice	100	365 7.13 0.66 0.180 - 0.206 0.177 79.95 0.12 - 1.3 0.0 0 5 115 28 0.80 0.0 11.62 0.64	- 185 185 208.19764812 usda/20444,au250,practice		usda/20444
F	basmati rice	white basmati;white basmati rice;basmati	cereal	rice		vegan,vegetarian,cooked-rice	100	365 7.13 0.66 0.180 - 0.206 0.177 79.95 0.12 - 1.3 0.0 0 5 115 28 0.80 0.0 11.62 0.64	- 185 usda/20444		usda/20444/stand-in
F	jasmine rice	thai fragrant rice;thai jasmine rice;fragrant rice	cereal	rice		vegan,vegetarian,cooked-rice	100	365 7.13 0.66 0.180 - 0.206 0.177 79.95 0.12 - 1.3 0.0 0 5 115 28 0.80 0.0 11.62 0.64	- 185 usda/20444		usda/20444/stand-in
F	parboiled rice	converted rice	cereal	rice		vegan,vegetarian,cooked-rice	100	374 7.51 1.03 0.294 - 0.258 0.322 80.89 0.33 68.29 1.8 0.0 0 2 174 71 0.74 0.0 9.86 0.71	- 185 usda/20446		usda/20446
F	medium-grain rice	medium-grain white rice	cereal	rice		vegan,vegetarian,cooked-rice	100	360 6.61 0.58 0.158 - 0.181 0.155 79.34 - - - - 0 1 86 9 0.80 0.0 12.89 0.58	- 195 usda/20450		usda/20450
F	short-grain rice	pudding rice;short-grain pudding rice;sushi rice;white short-grain rice	cereal	rice		vegan,vegetarian,cooked-rice	100	358 6.50 0.52 0.140 - 0.161 0.138 79.15 - - - - 0 1 76 3 0.80 0.0 13.29 0.54	- 200 usda/20452		usda/20452
F	risotto rice	arborio rice;carnaroli rice;vialone nano rice;arborio;carnaroli	cereal	rice		vegan,vegetarian,cooked-rice	100	360 6.61 0.58 0.158 - 0.181 0.155 79.34 - - - - 0 1 86 9 0.80 0.0 12.89 0.58	- 195 usda/20450		usda/20450/stand-in
F	paella rice	bomba rice;calasparra rice	cereal	rice		vegan,vegetarian,cooked-rice	100	360 6.61 0.58 0.158 - 0.181 0.155 79.34 - - - - 0 1 86 9 0.80 0.0 12.89 0.58	- 195 usda/20450		usda/20450/stand-in
F	brown rice	long-grain brown rice;wholegrain rice;whole-grain rice	cereal	rice		vegan,vegetarian,cooked-rice	100	367 7.54 3.20 0.591 0.001 1.054 1.000 76.25 0.66 72.51 3.6 0.0 0 5 250 9 1.29 0.0 11.80 1.21	- 185 usda/20036		usda/20036
F	brown basmati rice	wholegrain basmati rice	cereal	rice		vegan,vegetarian,cooked-rice	100	367 7.54 3.20 0.591 0.001 1.054 1.000 76.25 0.66 72.51 3.6 0.0 0 5 250 9 1.29 0.0 11.80 1.21	- 185 usda/20036		usda/20036/stand-in
F	short-grain brown rice	medium-grain brown rice	cereal	rice		vegan,vegetarian,cooked-rice	100	362 7.50 2.68 0.536 - 0.971 0.959 76.17 - - 3.4 0.0 0 4 268 33 1.80 0.0 12.37 1.27	- 190 usda/20040		usda/20040
F	red rice	camargue red rice	cereal	rice		vegan,vegetarian,cooked-rice	100	367 7.54 3.20 0.591 0.001 1.054 1.000 76.25 0.66 72.51 3.6 0.0 0 5 250 9 1.29 0.0 11.80 1.21	- 185 usda/20036		usda/20036/stand-in
F	black rice	forbidden rice	cereal	rice		vegan,vegetarian,cooked-rice	100	367 7.54 3.20 0.591 0.001 1.054 1.000 76.25 0.66 72.51 3.6 0.0 0 5 250 9 1.29 0.0 11.80 1.21	- 185 usda/20036		usda/20036/stand-in
F	glutinous rice	sticky rice;sweet rice;thai sticky rice	cereal	rice		vegan,vegetarian,cooked-rice	100	370 6.81 0.55 0.111 - 0.200 0.198 81.68 - - 2.8 - 0 7 77 11 1.60 0.0 10.46 0.49	- 185 usda/20054		usda/20054
F	flaked rice	poha;beaten rice;rice flakes	cereal	rice		vegan,vegetarian,cooked-rice	100	365 7.13 0.66 0.180 - 0.206 0.177 79.95 0.12 - 1.3 0.0 0 5 115 28 0.80 0.0 11.62 0.64	- 80 95 110 practice		usda/20444/stand-in
F	rice bran		cereal	rice		vegan,vegetarian,cooked-rice	100	316 13.35 20.85 4.171 - 7.549 7.459 49.69 0.90 - 21.0 0.0 0 5 1485 57 18.54 0.0 6.13 9.98	- 118 usda/20060		usda/20060
F	spaghetti	dried spaghetti;dry spaghetti	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 91 usda/20420		usda/20420/stand-in
F	macaroni	elbow macaroni;elbows;dried macaroni	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 105 122 125 usda/20420,practice		usda/20420/stand-in
F	penne	penne rigate;pasta quills	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 95 usda/20420		usda/20420/stand-in
F	fusilli	rotini;pasta spirals;pasta twists	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 96 usda/20420		usda/20420/stand-in
F	linguine	dried linguine	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88			usda/20420/stand-in
F	fettuccine	dried fettuccine	cereal	pasta	?wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88			usda/20420/stand-in
F	rigatoni		cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88			usda/20420/stand-in
F	farfalle	bow-tie pasta;pasta bows	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 81 usda/20420		usda/20420/stand-in
F	conchiglie	pasta shells;conchiglioni	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 64 usda/20420		usda/20420/stand-in
F	orzo	orzo pasta;risoni	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 165 182.5 200 practice		usda/20420/stand-in
F	vermicelli	angel hair;angel hair pasta;capellini	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88			usda/20420/stand-in
F	orecchiette		cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88			usda/20420/stand-in
F	dried pasta	pasta;dry pasta;pasta shapes;short pasta	cereal	pasta	wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88	- 64 91 122 usda/20420;elbows 122 usda/20420;farfalle 81 usda/20420;lasagne 90 usda/20420;penne 95 usda/20420;rotini 96 usda/20420;shells 64 usda/20420;spaghetti 91 usda/20420		usda/20420
F	wholewheat pasta	wholemeal pasta;whole-wheat pasta;wholewheat spaghetti;whole-wheat spaghetti;wholewheat penne	cereal	pasta	wheat	vegan,vegetarian	100	352 13.87 2.93 0.428 0.002 0.361 1.136 73.37 2.74 56.75 9.2 - 0 6 434 29 3.62 0.0 8.21 1.62	- 64 91 122 usda/20124;elbows 122 usda/20124;farfalle 81 usda/20124;lasagne 90 usda/20124;penne 95 usda/20124;rotini 96 usda/20124;shells 64 usda/20124;spaghetti 91 usda/20124		usda/20124
F	lasagne sheets	lasagne;lasagna;lasagna noodles;lasagna sheets;dried lasagne;dried lasagne sheets	cereal	pasta	?wheat	vegan,vegetarian	100	371 13.04 1.51 0.277 0.000 0.171 0.564 74.67 2.67 62.45 3.2 0.0 0 6 223 21 1.30 0.0 9.90 0.88			usda/20420/stand-in
F	fresh pasta	fresh egg pasta;fresh tagliatelle;fresh lasagne;fresh lasagne sheets;fresh linguine;fresh spaghetti	cereal	pasta	wheat,eggs	vegetarian	100	288 11.31 2.30 0.328 - 0.271 0.942 54.73 - - - - 73 26 179 15 3.35 - 31.00 0.66			usda/20093
F	egg noodles	dried egg noodles;medium egg noodles;tagliatelle;dried tagliatelle;pappardelle;egg pasta;fine egg noodles	cereal	pasta	wheat,eggs	vegetarian	100	384 14.16 4.44 1.180 0.061 1.252 1.331 71.27 1.88 - 3.3 0.0 84 21 244 35 1.90 0.3 9.01 1.12	- 38 usda/20409		usda/20409
F	udon noodles	udon;dried udon;dried udon noodles	cereal	pasta	wheat	vegan,vegetarian	100	356 11.35 0.81 0.115 - 0.095 0.330 74.10 - - 4.3 0.0 0 1840 164 23 1.32 0.0 9.21 4.54			usda/20116/stand-in
F	soba noodles	soba;buckwheat noodles	cereal	pasta	?buckwheat,wheat	vegan,vegetarian	100	336 14.38 0.71 0.136 - 0.185 0.220 74.62 - - - - 0 792 252 35 2.70 0.0 6.88 3.41			usda/20114
F	somen noodles	somen	cereal	pasta	wheat	vegan,vegetarian	100	356 11.35 0.81 0.115 - 0.095 0.330 74.10 - - 4.3 0.0 0 1840 164 23 1.32 0.0 9.21 4.54			usda/20116
F	ramen noodles	ramen	cereal	pasta	?wheat	vegan,vegetarian					
F	rice noodles	flat rice noodles;rice vermicelli;rice sticks;pad thai noodles;vermicelli rice noodles;thin rice noodles	cereal	pasta		vegan,vegetarian	100	364 5.95 0.56 0.153 - 0.175 0.150 80.18 0.12 - 1.6 0.0 0 182 30 18 0.70 0.0 11.91 0.85			usda/20133
F	glass noodles	cellophane noodles;bean thread noodles;mung bean noodles;bean threads	cereal	pasta		vegan,vegetarian	100	351 0.16 0.06 0.017 0.000 0.008 0.018 86.09 0.00 - 0.5 0.0 0 10 10 25 2.17 0.0 13.42 0.27	- 140 usda/16082		usda/16082
F	gluten-free corn pasta	corn pasta;maize pasta	cereal	pasta	?	vegan,vegetarian	100	357 7.46 2.08 0.290 - 0.543 0.924 79.26 - - 11.0 0.0 0 3 294 4 0.93 - 10.00 1.20	- 105 usda/20091		usda/20091
F	gnocchi	potato gnocchi;fresh gnocchi	cereal	pasta	?	vegan,vegetarian					
F	tortellini		cereal	pasta	?wheat						
F	ravioli		cereal	pasta	?wheat						
F	breadcrumbs	fresh breadcrumbs;white breadcrumbs;fresh white breadcrumbs;soft breadcrumbs;soft white breadcrumbs;bread crumbs;fresh bread crumbs	cereal	bread	?wheat		100	266 8.85 3.33 0.698 0.027 0.599 1.602 49.42 5.67 37.17 2.7 0.0 0 490 126 144 3.61 0.0 36.42 1.98	- 56.78117676 au250;crushed 45 usda/18069;diced 35 usda/18069	slice/large 30 usda/18069;slice/- 15 22.5 30 usda/18069	usda/18069/stand-in
F	dried breadcrumbs	dry breadcrumbs;dry bread crumbs;golden breadcrumbs;fine dry breadcrumbs;dried bread crumbs;toasted breadcrumbs	cereal	bread	?wheat		100	395 13.35 5.30 1.203 - 1.023 2.060 71.98 6.20 59.66 4.5 0.0 0 732 196 183 4.83 0.0 6.51 2.87	- 108 usda/18079		usda/18079
F	panko	panko breadcrumbs;panko crumbs;japanese breadcrumbs	cereal	bread	?wheat		100	395 13.35 5.30 1.203 - 1.023 2.060 71.98 6.20 59.66 4.5 0.0 0 732 196 183 4.83 0.0 6.51 2.87	- 50 57.5 65 practice		usda/18079/stand-in
F	white bread	sliced white bread;stale white bread;day-old white bread;white sandwich bread;white loaf	cereal	bread	?wheat		100	266 8.85 3.33 0.698 0.027 0.599 1.602 49.42 5.67 37.17 2.7 0.0 0 490 126 144 3.61 0.0 36.42 1.98	- 35 40 45 usda/18069;crushed 45 usda/18069;diced 35 usda/18069	slice/large 30 usda/18069;slice/- 15 22.5 30 usda/18069	usda/18069
F	wholemeal bread	whole-wheat bread;brown bread;wholewheat bread	cereal	bread	?wheat		100	252 12.45 3.50 0.722 0.020 0.620 1.592 42.71 4.34 28.73 6.0 0.0 0 455 254 161 2.47 0.0 39.01 2.32		slice/- 32 usda/18075	usda/18075
F	rye bread		cereal	bread	?rye		100	259 8.50 3.30 0.626 - 1.311 0.799 48.30 3.85 - 5.8 0.0 0 603 166 73 2.83 0.0 37.30 2.50		slice/- 7 25 32 usda/18060	usda/18060
F	pumpernickel bread	pumpernickel;dark rye bread	cereal	bread	?rye		100	250 8.70 3.10 0.437 - 0.932 1.237 47.50 0.53 - 6.5 0.0 0 596 208 68 2.87 0.0 37.90 2.60		slice/- 7 23 32 usda/18044	usda/18044
F	sourdough bread	sourdough;country bread;crusty bread;crusty white bread;french bread;baguette;stale baguette;bâtard	cereal	bread	?wheat		100	272 10.75 2.42 0.529 0.005 0.362 0.855 51.88 4.62 44.23 2.2 0.0 0 602 117 52 3.91 0.0 33.00 1.96		slice/- 139 usda/18029	usda/18029
F	ciabatta	italian bread	cereal	bread	?wheat		100	271 8.80 3.50 0.000 - 0.812 1.390 50.10 3.17 - 3.2 0.0 0 550 110 78 2.94 0.0 35.70 1.90		slice/large 30 usda/18033;slice/medium 20 usda/18033;slice/small 10 usda/18033;slice/- 10 20 30 usda/18033	usda/18033
F	focaccia		cereal	bread	?wheat		100	249 8.77 7.89 0.877 0.000 5.670 0.994 35.82 1.75 - 1.8 0.0 0 561 114 35 3.16 0.0 45.91 1.60		-/- 57 usda/18973	usda/18973
F	pitta bread	pita bread;pitta;pita;white pitta bread	cereal	bread	?wheat		100	275 9.10 1.20 0.166 - 0.105 0.535 55.70 - - 2.2 - 0 536 120 86 1.40 - 32.10 1.90		-/large 60 usda/18413;-/- 60 usda/18413	usda/18413
F	naan bread	naan;nan bread	cereal	bread	?wheat		100	291 9.62 5.65 1.393 0.042 1.801 2.098 50.43 3.55 42.75 2.2 - - 465 125 84 3.25 - 32.60 1.69		-/- 90 usda/28307	usda/28307
F	chapati	roti;chapatti	cereal	bread	?wheat		100	297 11.25 7.45 1.953 0.034 1.893 1.147 46.36 2.72 37.75 4.9 - - 409 266 93 3.01 - 33.00 1.94		-/- 68 usda/28306	usda/28306
F	flour tortillas	wheat tortillas;soft tortillas;flour wraps;tortilla wraps	cereal	bread	?wheat		100	306 8.20 7.99 2.924 0.052 1.751 2.290 49.38 3.71 38.38 3.5 0.0 0 736 125 146 3.63 0.0 31.98 2.45		-/medium 30 usda/18364;-/- 30 60.5 117 usda/18364	usda/18364
F	corn tortillas	maize tortillas	cereal	bread	?		100	218 5.70 2.85 0.453 - 0.692 1.419 44.64 0.88 - 6.3 0.0 0 45 186 81 1.23 0.0 45.89 0.93		-/- 24 usda/18363	usda/18363
F	brioche	egg bread;challah	cereal	bread	?wheat,eggs		100	287 9.50 6.00 1.593 - 2.302 1.106 47.80 1.78 - 2.3 0.0 51 380 115 93 3.04 0.4 34.70 1.80		slice/- 40 usda/18027	usda/18027
F	croissant	butter croissant;stale croissant	cereal	bread	?wheat,milk		100	406 8.20 21.00 11.659 - 5.525 1.094 45.80 11.26 - 2.6 0.0 67 467 118 37 2.03 0.0 23.20 1.60		-/large 67 usda/18239;-/medium 57 usda/18239;-/small 42 usda/18239;-/- 28 28 67 usda/18239	usda/18239
F	english muffin		cereal	bread	?wheat		100	235 7.70 1.80 0.259 - 0.302 0.888 46.00 - - 2.7 - 0 464 131 174 0.89 - 42.10 2.20		-/- 57 usda/18438	usda/18438
F	bagel	plain bagel	cereal	bread	?wheat		100	275 10.50 1.60 0.220 - 0.131 0.696 53.40 - - 2.3 - 0 534 101 18 1.36 - 32.60 1.80		-/large 131 usda/18408;-/medium 105 usda/18408;-/small 69 usda/18408;-/- 69 105 131 usda/18408	usda/18408
F	burger bun	hamburger bun;hot dog roll;hotdog roll	cereal	bread	?wheat		100	279 9.77 3.91 0.842 0.027 0.748 1.780 50.12 7.28 36.70 1.8 0.0 0 494 122 144 3.43 0.0 34.34 1.85			usda/18350
F	bread roll	dinner roll;soft roll;white roll	cereal	bread	?wheat		100	310 10.86 6.47 1.375 0.000 1.881 2.509 52.04 5.55 - 2.0 0.0 4 467 139 178 3.72 0.0 28.44 2.18		-/- 25 35.5 86 usda/18342	usda/18342
F	croûtons	croutons;plain croutons	cereal	bread	?wheat		100	407 11.90 6.60 1.510 - 3.059 1.273 73.50 - - 5.1 - 0 698 124 76 4.08 - 5.50 2.50	- 30 usda/18242		usda/18242
F	breadsticks	grissini	cereal	bread	?wheat		100	412 12.00 9.50 1.410 - 3.568 3.628 68.40 1.26 - 3.0 0.0 0 713 124 22 4.28 0.0 6.10 3.90	- 46 usda/18080;chopped 46 usda/18080	stick/small 5 usda/18080;stick/- 5 8 10 usda/18080	usda/18080
F	puff pastry	ready-made puff pastry;ready-rolled puff pastry;puff pastry sheet;all-butter puff pastry;frozen puff pastry		pastry	?wheat		100	551 7.30 38.10 9.643 - 21.597 4.894 45.10 0.74 - 1.5 0.0 0 249 61 10 2.56 - 8.50 1.00		shell/- 47 usda/18337	usda/18337/stand-in
F	shortcrust pastry	pie crust;pie dough;ready-made shortcrust;ready-made shortcrust pastry;pastry case;sweet shortcrust pastry		pastry	?wheat						
F	filo pastry	phyllo;phyllo dough;filo;phyllo pastry;filo sheets;filo pastry sheets;phyllo sheets		pastry	?wheat		100	299 7.10 6.00 1.470 - 3.149 0.923 52.60 0.18 - 1.9 0.0 0 483 74 11 3.21 0.0 32.60 1.60		sheet/- 19 usda/18338,practice	usda/18338
F	wonton wrappers	wonton skins;gyoza wrappers;dumpling wrappers		pastry	?wheat		100	291 9.80 1.50 0.263 - 0.195 0.610 57.90 - - 1.8 0.0 9 572 82 47 3.36 - 28.80 1.90		-/- 8 20 32 usda/18368	usda/18368
F	rice paper	rice paper wrappers;spring roll wrappers;rice paper rounds		pastry		vegan,vegetarian					
F	matzo	matzo crackers;matzah	cereal	bread	?wheat		100	395 10.00 1.40 0.226 - 0.127 0.603 83.70 0.29 - 3.0 0.0 0 0 112 13 3.16 0.0 4.30 0.60		-/- 28 usda/18217	usda/18217
F	matzo meal	matzah meal;fine matzo meal	cereal	bread	?wheat		100	395 10.00 1.40 0.226 - 0.127 0.603 83.70 0.29 - 3.0 0.0 0 0 112 13 3.16 0.0 4.30 0.60		-/- 28 usda/18217	usda/18217/stand-in
F	cream crackers	saltines;saltine crackers;soda crackers;plain crackers	cereal	bread	?wheat		100	418 9.46 8.64 1.653 0.167 1.986 4.835 74.05 1.29 67.83 2.8 0.0 0 941 152 19 5.57 0.0 5.05 2.79	- 70 usda/18228;crushed 70 usda/18228	-/- 1 4.49 10 usda/18228	usda/18228
F	crispbread	rye crispbread	cereal	bread	?rye		100	334 9.60 0.90 0.108 - 0.152 0.397 80.40 1.01 - 22.9 0.0 0 557 495 40 5.94 0.0 5.00 4.10	- 61 usda/18226;crushed 61 usda/18226		usda/18226/stand-in
F	oatcakes		cereal	bread	?oats						
F	digestive biscuits	graham crackers;digestives;graham cracker crumbs;digestive biscuit crumbs;crushed digestive biscuits;graham crumbs;biscuit crumbs	cereal	biscuit	?wheat		100	430 6.69 10.60 1.633 0.055 2.509 5.388 77.66 24.85 46.56 3.4 0.0 0 459 170 77 3.78 0.0 3.39 1.66	- 84 99.2233309375 118.29411825 usda/18173,mill,au250;crushed 84 99.2233309375 118.29411825 usda/18173,mill,au250	-/- 15 usda/18173	usda/18173/stand-in
F	ginger biscuits	gingersnaps;ginger nuts;ginger snap biscuits	cereal	biscuit	?wheat		100	416 5.60 9.80 2.451 - 5.365 1.372 76.90 19.92 - 2.2 0.0 0 501 346 77 6.40 0.0 5.30 2.40		-/large 32 usda/18172;-/- 32 usda/18172	usda/18172
F	sponge fingers	ladyfingers;savoiardi;savoiardi biscuits;boudoir biscuits	cereal	biscuit	?wheat,eggs		100	363 10.60 9.10 3.022 - 3.745 1.423 59.70 - - 1.0 - 221 147 113 47 3.58 - 19.50 1.10		-/- 11 usda/18423	usda/18423
F	shortbread	shortbread biscuits;shortbread cookies	cereal	biscuit	?wheat		100	514 5.37 26.22 8.105 0.714 6.708 8.326 63.78 21.65 40.47 1.3 0.0 0 353 88 13 2.98 0.0 3.60 1.04		-/- 11.8 usda/18192	usda/18192
F	amaretti biscuits	amaretti;amaretti cookies;crushed amaretti	cereal	biscuit	?						
F	vanilla wafers		cereal	biscuit	?wheat		100	441 5.00 15.20 3.838 - 6.544 3.887 73.60 37.50 - 1.9 0.0 51 388 97 48 2.38 0.0 5.10 1.10	- 80 usda/18212;crushed 80 usda/18212	-/large 6 usda/18212;-/medium 4 usda/18212;-/small 3 usda/18212;-/- 3 4 6 usda/18212	usda/18212
F	chocolate wafers	chocolate wafer cookies	cereal	biscuit	?wheat		100	433 6.60 14.20 4.241 - 4.865 4.153 72.70 37.43 - 3.4 0.0 2 580 210 31 4.01 0.0 4.50 2.00	- 112 usda/18157;crushed 112 usda/18157	-/- 6 usda/18157	usda/18157
F	wafer papers	edible wafer paper;edible rice paper			?						
F	sponge cake	trifle sponges;plain sponge cake	cereal	cake	?wheat,eggs		100	290 5.40 2.70 0.802 - 0.949 0.448 61.00 36.66 - 0.5 0.0 102 623 99 70 2.72 0.2 29.70 1.20		-/- 38 usda/18133	usda/18133
F	rice cakes	plain rice cakes	cereal	bread			100	387 8.20 2.80 0.570 - 1.030 0.990 81.50 0.88 - 4.2 0.0 0 26 290 11 1.49 0.0 5.80 1.70		cake/- 9 usda/19816	usda/19816
F	tortilla chips	corn chips;nachos	cereal	bread	?		100	497 6.62 22.33 2.776 0.066 8.584 9.179 67.38 1.21 60.55 4.7 0.0 0 310 206 104 1.32 0.0 1.94 1.73			usda/25028
F	crisps	potato crisps;potato chips	cereal	snack			100	536 7.00 34.60 5.430 - 18.000 9.160 52.90 - - 4.8 - 0 8 1275 24 1.63 - 1.90 3.60			usda/19810
F	pretzels	hard pretzels	cereal	snack	?wheat		100	381 9.10 3.50 0.750 - 1.360 1.220 79.20 2.21 - 2.8 0.0 0 250 146 36 4.32 0.0 3.30 4.90			usda/19814
F	popcorn	popped corn;air-popped popcorn;plain popcorn	cereal	snack		vegan,vegetarian	100	382 12.00 4.20 0.570 - 1.100 1.900 77.90 - - 15.1 - 0 4 301 10 2.66 - 4.10 1.80	- 8 usda/19806		usda/19806
F	sugar	granulated sugar;white sugar;white granulated sugar;granulated white sugar;sucrose;table sugar;cane sugar;beet sugar;golden granulated sugar;pure cane sugar	sugar	sugar		vegan,vegetarian	100	387 0.00 0.00 0.000 - 0.000 0.000 99.98 99.80 - 0.0 0.0 0 1 2 1 0.05 0.0 0.02 0.01	- 198 200 236.5882365 usda/19335,mill,ci,bba,au250		usda/19335
F	caster sugar	castor sugar;superfine sugar;golden caster sugar;white caster sugar;fine sugar;baker's sugar;extra-fine sugar	sugar	sugar		vegan,vegetarian	100	387 0.00 0.00 0.000 - 0.000 0.000 99.98 99.80 - 0.0 0.0 0 1 2 1 0.05 0.0 0.02 0.01	- 190 200 201.6 usda/19335,mill		usda/19335/stand-in
F	icing sugar	confectioners' sugar;powdered sugar;golden icing sugar;10x sugar	sugar	sugar		vegan,vegetarian	100	389 0.00 0.00 0.000 - 0.000 0.000 99.77 97.81 1.26 0.0 0.0 0 2 2 1 0.06 0.0 0.23 0.01	- 113 120 175.07529501 usda/19336,mill,ci,au250;sifted 100 usda/19336		usda/19336
F	brown sugar	light brown sugar;soft brown sugar;soft light brown sugar;light soft brown sugar;golden brown sugar;light muscovado sugar	sugar	sugar		vegan,vegetarian	100	380 0.12 0.00 0.000 - 0.000 0.000 98.09 97.02 - 0.0 0.0 0 28 133 83 0.71 0.0 1.34 0.45	- 144 205.31071171875 220.8 usda/19334,mill,ci,au250;loose 144 144.5 145 usda/19334;packed 198 213 220.8 usda/19334,mill,ci		usda/19334
F	dark brown sugar	soft dark brown sugar;dark soft brown sugar;dark muscovado sugar;muscovado sugar;muscovado;molasses sugar;barbados sugar	sugar	sugar		vegan,vegetarian	100	380 0.12 0.00 0.000 - 0.000 0.000 98.09 97.02 - 0.0 0.0 0 28 133 83 0.71 0.0 1.34 0.45	- 144 205.31071171875 220.8 usda/19334,mill,ci,au250;loose 144 144.5 145 usda/19334;packed 198 213 220.8 usda/19334,mill,ci		usda/19334/stand-in
F	demerara sugar	turbinado sugar;demerara;raw cane sugar;raw sugar	sugar	sugar		vegan,vegetarian	100	399 0.00 0.00 - - - - 99.80 99.19 - - - - 3 29 12 0.37 - 0.03 0.17	- 202 211.4 220.8 usda/19908		usda/19908
F	pearl sugar	nibbed sugar;sugar nibs;hail sugar	sugar	sugar		vegan,vegetarian	100	387 0.00 0.00 0.000 - 0.000 0.000 99.98 99.80 - 0.0 0.0 0 1 2 1 0.05 0.0 0.02 0.01	- 170 185 200 practice		usda/19335/stand-in
F	sugar cubes	cube sugar;lump sugar;sugar lumps;rock sugar	sugar	sugar		vegan,vegetarian	100	387 0.00 0.00 0.000 - 0.000 0.000 99.98 99.80 - 0.0 0.0 0 1 2 1 0.05 0.0 0.02 0.01		-/- 2.3 3.15 4 practice	usda/19335/stand-in
F	preserving sugar	jam sugar crystals	sugar	sugar		vegan,vegetarian	100	387 0.00 0.00 0.000 - 0.000 0.000 99.98 99.80 - 0.0 0.0 0 1 2 1 0.05 0.0 0.02 0.01	- 190 200 210 practice		usda/19335/stand-in
F	jam sugar	gelling sugar;sugar with pectin	sugar	sugar		vegan,vegetarian	100	387 0.00 0.00 0.000 - 0.000 0.000 99.98 99.80 - 0.0 0.0 0 1 2 1 0.05 0.0 0.02 0.01	- 195 202.5 210 practice		usda/19335/stand-in
F	vanilla sugar		sugar	sugar		vegan,vegetarian	100	387 0.00 0.00 0.000 - 0.000 0.000 99.98 99.80 - 0.0 0.0 0 1 2 1 0.05 0.0 0.02 0.01	- 200 200.8 201.6 usda/19335		usda/19335/stand-in
F	palm sugar	coconut sugar;jaggery;gur;coconut palm sugar;piloncillo;panela;rapadura	sugar	sugar		vegan,vegetarian	100	399 0.00 0.00 - - - - 99.80 99.19 - - - - 3 29 12 0.37 - 0.03 0.17	- 145 172.5 200 practice		usda/19908/stand-in
F	maple sugar		sugar	sugar		vegan,vegetarian	100	354 0.10 0.20 0.036 - 0.064 0.100 90.90 84.87 - 0.0 0.0 0 11 274 90 1.61 0.0 8.00 0.80	- 144 usda/19340	-/- 28 usda/19340	usda/19340
F	date sugar		sugar	sugar		vegan,vegetarian					
F	fructose	fruit sugar	sugar	sugar		vegan,vegetarian	100	368 0.00 0.00 0.000 - 0.000 0.000 100.00 92.70 7.30 0.0 0.0 0 12 0 0 0.10 0.0 0.00 0.00	- 196 198.8 201.6 usda/43216		usda/43216
F	glucose powder	dextrose;glucose;grape sugar;dextrose powder	sugar	sugar		vegan,vegetarian		364 0 0 - - - - 91 91 - 0 - - - - - - - 9	- 130 150 170 practice		memory
F	lactose	milk sugar	sugar	sugar	milk	vegetarian,animal		380 0 0 - - - - 95 95 - 0 - - - - - - - 5			memory
F	isomalt		sugar	sugar		vegan,vegetarian					
F	xylitol		sugar	sugar		vegan,vegetarian					
F	erythritol		sugar	sugar		vegan,vegetarian					
F	stevia powder	stevia	sugar	sugar		vegan,vegetarian					
F	fondant icing	ready-to-roll icing;sugarpaste;rolled fondant	sugar	sugar	?						
F	fondant	poured fondant	sugar	sugar		vegan,vegetarian	100	373 0.00 0.02 0.000 - 0.000 0.000 93.18 88.90 - 0.0 0.0 0 11 4 3 0.01 0.0 6.74 0.06			usda/19099
F	sprinkles	hundreds and thousands;sugar strands	sugar	sugar	?						
F	honey	clear honey;runny honey;set honey;liquid honey;wildflower honey;mild honey;pure honey;creamed honey;acacia honey	sugar	syrup		honey,animal,vegetarian	100	304 0.30 0.00 0.000 - 0.000 0.000 82.40 82.12 - 0.2 0.0 0 4 52 6 0.42 0.0 17.10 0.20	- 302.4 336 354.88235475 usda/19296,mill,bba,au250	packet/- 14 usda/19296	usda/19296
F	golden syrup	light treacle;refiners' syrup;cane syrup	sugar	syrup		vegan,vegetarian	100	269 0.00 0.00 0.000 - 0.000 0.000 73.14 73.20 - 0.0 0.0 0 58 63 13 3.60 0.0 26.00 0.86	- 320 352 354.88235475 au250,practice		usda/90480/stand-in
F	treacle	black treacle;dark treacle	sugar	syrup		vegan,vegetarian	100	290 0.00 0.10 0.018 - 0.032 0.050 74.73 74.72 - 0.0 0.0 0 37 1464 205 4.72 0.0 21.87 3.30	- 320 337 352 usda/19304,practice		usda/19304/stand-in
F	molasses	blackstrap molasses;dark molasses;light molasses;unsulphured molasses;unsulfured molasses	sugar	syrup		vegan,vegetarian	100	290 0.00 0.10 0.018 - 0.032 0.050 74.73 74.72 - 0.0 0.0 0 37 1464 205 4.72 0.0 21.87 3.30	- 337 338.5 340 usda/19304,mill		usda/19304
F	maple syrup	pure maple syrup	sugar	syrup		vegan,vegetarian	100	260 0.04 0.06 0.007 - 0.011 0.017 67.04 60.46 - 0.0 0.0 0 12 212 102 0.11 0.0 32.39 0.47	- 312 315 320 usda/19353,mill		usda/19353
F	corn syrup	light corn syrup	sugar	syrup		vegan,vegetarian	100	283 0.00 0.20 0.000 - 0.000 0.000 76.79 76.77 - 0.0 0.0 0 62 1 13 0.00 0.0 22.81 0.20	- 341 346.5 352 usda/19350		usda/19350
F	dark corn syrup		sugar	syrup		vegan,vegetarian	100	286 0.00 0.00 0.000 - 0.000 0.000 77.59 77.59 - 0.0 0.0 0 155 44 18 0.37 0.0 22.01 0.40	- 320 324 328 usda/19349		usda/19349
F	glucose syrup	liquid glucose;confectioners' glucose	sugar	syrup		vegan,vegetarian	100	283 0.00 0.20 0.000 - 0.000 0.000 76.79 76.77 - 0.0 0.0 0 62 1 13 0.00 0.0 22.81 0.20	- 341 346.5 352 usda/19350		usda/19350/stand-in
F	agave syrup	agave nectar;agave	sugar	syrup		vegan,vegetarian	100	310 0.09 0.45 0.000 - 0.000 0.000 76.37 68.03 - 0.2 0.0 0 4 4 1 0.09 0.0 22.94 0.14	- 336 mill		usda/19912
F	malt syrup	malt extract;barley malt syrup;barley malt extract;liquid malt	sugar	syrup	barley	vegan,vegetarian	100	318 6.20 0.00 0.000 - 0.000 0.000 71.30 71.30 - 0.0 0.0 0 35 320 61 0.96 - 21.10 1.30	- 332 336 336 usda/19352,mill		usda/19352
F	rice syrup	brown rice syrup;rice malt syrup	sugar	syrup	?	vegan,vegetarian			- 319.394119275 327.6747075525 335.95529583 practice		
F	date syrup	date molasses;silan	sugar	syrup		vegan,vegetarian		290 1 0 - - - - 73 68 - - - - - - - - - 25	- 307.56470745 319.394119275 331.2235311 practice		memory
F	sorghum syrup	sorghum molasses	sugar	syrup		vegan,vegetarian	100	290 0.00 0.00 0.000 - 0.000 0.000 74.90 74.90 - 0.0 0.0 0 8 1000 150 3.80 0.0 22.70 2.40	- 330 333 336 usda/19355		usda/19355
F	pomegranate molasses	pomegranate syrup	sugar	syrup		vegan,vegetarian			- 307.56470745 319.394119275 331.2235311 practice		
F	carob syrup	carob molasses	sugar	syrup		vegan,vegetarian			- 307.56470745 319.394119275 331.2235311 practice		
F	beet syrup	sugar beet syrup	sugar	syrup		vegan,vegetarian		300 1.6 0 - - - - 73 69 - - - - - - - - - 22	- 320 328 336 practice		memory
F	invert sugar	invert syrup	sugar	syrup		vegan,vegetarian		308 0 0 - - - - 77 77 - - - - - - - - - 23	- 326.49176637 331.2235311 335.95529583 practice		memory
F	grenadine	grenadine syrup	sugar	syrup		vegan,vegetarian	100	268 0.00 0.00 0.000 - 0.000 0.000 66.91 46.55 - 0.0 0.0 0 27 28 6 0.05 0.0 32.40 0.69	- 320 320.8 321.6 usda/42040		usda/42040
F	elderflower cordial	elderflower syrup	sugar	syrup		vegan,vegetarian			- 272.076471975 283.9058838 295.735295625 practice		
F	sugar syrup	simple syrup;stock syrup	sugar	syrup		vegan,vegetarian		200 0 0 - - - - 50 50 - - - - - - - - - 50	- 283.9058838 295.735295625 307.56470745 practice		memory
F	caramel sauce		sugar	syrup	?				- 288 320 352 practice		
F	dulce de leche	milk caramel;cajeta	sugar	syrup	milk	vegetarian,animal	100	315 6.84 7.35 4.534 0.364 2.143 0.375 55.35 49.74 - 0.0 0.0 29 129 350 251 0.17 0.2 28.71 1.74	- 304 usda/01225		usda/01225
F	butter	sweet cream butter;butter block;cultured butter;european-style butter	fat	butter	milk	vegetarian,animal	100	717 0.85 81.11 50.489 - 23.430 3.010 0.06 0.06 - 0.0 0.0 215 - 24 24 0.02 0.0 17.94	- 226 227 236.5882365 usda/01145,mill,ci,cakebible,au250	pat/- 5 usda/01145;stick/- 113 usda/01145	usda/01145
F	unsalted butter	sweet butter;unsalted european butter;butter without salt	fat	butter	milk	vegetarian,animal	100	717 0.85 81.11 50.489 - 23.430 3.010 0.06 0.06 - 0.0 0.0 215 11 24 24 0.02 0.0 17.94 0.09	- 226 227 236.5882365 usda/01145,mill,ci,cakebible,au250	pat/- 5 usda/01145;stick/- 113 usda/01145	usda/01145
F	salted butter	slightly salted butter;lightly salted butter;butter with salt	fat	butter	milk	vegetarian,animal	100	717 0.85 81.11 51.368 3.278 21.021 3.043 0.06 0.06 - 0.0 0.0 215 643 24 24 0.02 0.0 15.87 2.11	- 226 227 236.5882365 usda/01001,mill,ci,cakebible,au250	pat/- 5 usda/01001;stick/- 113 usda/01001	usda/01001
F	whipped butter		fat	butter	milk	vegetarian,animal	100	718 0.49 78.30 45.390 2.669 19.874 3.331 2.87 0.06 - 0.0 0.0 225 583 41 23 0.05 0.0 16.72 1.62	- 150.4 150.7 151 usda/01002	pat/- 3.8 usda/01002;stick/- 76 usda/01002	usda/01002
F	ghee	clarified butter;butter oil;anhydrous butter;butterfat	fat	butter	milk	vegetarian,animal	100	876 0.28 99.48 61.924 - 28.732 3.694 0.00 0.00 - 0.0 0.0 256 2 5 4 0.00 0.0 0.24 0.00	- 192.77675725 204.8 205 usda/01003,cakebible		usda/01003
F	brown butter	beurre noisette;browned butter	fat	butter	milk	vegetarian,animal	100	876 0.28 99.48 61.924 - 28.732 3.694 0.00 0.00 - 0.0 0.0 256 2 5 4 0.00 0.0 0.24 0.00	- 204.8 204.9 205 usda/01003		usda/01003/stand-in
F	lard	pork lard;leaf lard;pork fat;rendered pork fat	fat	fat		animal,meat	100	902 0.00 100.00 39.200 - 45.100 11.200 0.00 0.00 - 0.0 0.0 95 0 0 0 0.00 2.5 0.00 0.00	- 204.8 204.9 205 usda/04002		usda/04002
F	suet	beef suet;shredded suet;shredded beef suet	fat	fat	?	animal,meat	100	854 1.50 94.00 52.300 - 31.520 3.170 0.00 0.00 - 0.0 0.0 68 7 16 2 0.17 - 4.00 0.10	- 110 120 130 practice		usda/13335
F	vegetable suet	shredded vegetable suet	fat	fat	?	vegan,vegetarian			- 110 120 130 practice		
F	beef dripping	dripping;beef fat;tallow;beef tallow	fat	fat		animal,meat	100	902 0.00 100.00 49.800 - 41.800 4.000 0.00 0.00 - 0.0 0.0 109 0 0 0 0.00 0.7 0.00 0.00	- 204.8 204.9 205 usda/04001		usda/04001
F	lamb fat	mutton fat	fat	fat		animal,meat	100	902 0.00 100.00 47.300 - 40.600 7.800 0.00 0.00 - 0.0 0.0 102 0 0 0 0.00 0.7 0.00 0.00	- 204.8 204.9 205 usda/04520		usda/04520
F	duck fat		fat	fat		animal,meat,poultry	100	882 0.00 99.80 33.200 - 49.300 12.900 0.00 0.00 - 0.0 0.0 100 0 0 0 0.00 4.8 0.20 0.00	- 204.8 204.9 205 usda/04574		usda/04574
F	goose fat		fat	fat		animal,meat,poultry	100	900 0.00 99.80 27.700 - 56.700 11.000 0.00 - - 0.0 - 100 0 0 0 0.00 - 0.20 0.00	- 204.8 204.9 205 usda/04576		usda/04576
F	chicken fat	schmaltz	fat	fat		animal,meat,poultry	100	900 0.00 99.80 29.800 - 44.700 20.900 0.00 0.00 - 0.0 0.0 85 0 0 0 0.00 4.8 0.20 0.00	- 204.8 204.9 205 usda/04542		usda/04542
F	bacon fat	bacon grease;bacon dripping	fat	fat		animal,meat	100	897 0.00 99.50 39.004 - 44.874 11.144 0.00 0.00 - 0.0 0.0 95 150 0 0 0.00 2.5 0.00 0.50	- 206.4 usda/04609		usda/04609
F	pork back fat	fatback;pork fatback;back fat;lardo	fat	fat		animal,meat,raw-meat	89	812 2.92 88.69 32.210 - 41.950 10.350 0.00 0.00 - 0.0 0.0 57 11 65 2 0.18 3.1 7.69 0.70			usda/10004
F	margarine	baking margarine;block margarine;hard margarine;stick margarine	fat	fat	?		100	717 0.16 80.71 15.189 14.890 38.877 24.302 0.70 0.00 - 0.0 0.0 0 751 18 3 0.06 0.0 16.52 1.92	- 224 225.6 227 usda/04610	pat/- 5 usda/04610;stick/- 113 usda/04610	usda/04610
F	soft margarine	baking spread;tub margarine;dairy-free spread;sunflower spread;vegan butter;plant butter;vegan spread;baking fat spread	fat	fat	?		100	713 0.22 80.17 14.224 5.827 36.435 26.741 0.75 0.00 - 0.0 0.0 0 657 17 3 0.00 0.0 17.07 1.78	- 227 227.1 227.2 usda/04611		usda/04611
F	vegetable shortening	shortening;white vegetable fat;vegetable fat;solid vegetable fat	fat	fat	?	vegan,vegetarian	100	884 0.00 99.97 24.980 13.164 41.186 28.097 0.00 0.00 - 0.0 0.0 0 4 0 1 0.07 0.0 0.00 0.03	- 191.35928109375 204.8 205 usda/04615,cakebible		usda/04615
F	cocoa butter		fat	fat		vegan,vegetarian	100	884 0.00 100.00 59.700 - 32.900 3.000 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 - 0.00 0.00	- 216 217.6 218 usda/04501		usda/04501
F	olive oil	light olive oil;mild olive oil;pure olive oil	fat	oil		vegan,vegetarian	100	884 0.00 100.00 13.808 - 72.961 10.523 0.00 0.00 - 0.0 0.0 0 2 1 1 0.56 0.0 0.00 0.00	- 216 usda/04053		usda/04053
F	extra-virgin olive oil	virgin olive oil;EVOO;good olive oil	fat	oil		vegan,vegetarian	100	884 0.00 100.00 13.808 - 72.961 10.523 0.00 0.00 - 0.0 0.0 0 2 1 1 0.56 0.0 0.00 0.00	- 216 usda/04053		usda/04053/stand-in
F	sunflower oil		fat	oil		vegan,vegetarian	100	884 0.00 100.00 10.300 - 19.500 65.700 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04506		usda/04506
F	rapeseed oil	canola oil;cold-pressed rapeseed oil	fat	oil		vegan,vegetarian	100	884 0.00 100.00 7.365 0.395 63.276 28.142 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 218 224 usda/04582		usda/04582
F	vegetable oil	cooking oil;neutral oil;frying oil;salad oil;neutral vegetable oil	fat	oil	?	vegan,vegetarian	100	884 0.00 100.00 15.650 0.533 22.783 57.740 0.00 0.00 - 0.0 0.0 0 0 0 0 0.05 0.0 0.00 0.00	- 198 216 218 usda/04044,mill,cakebible		usda/04044/stand-in
F	soybean oil	soya oil;soy oil;soya bean oil	fat	oil	soybeans	vegan,vegetarian	100	884 0.00 100.00 15.650 0.533 22.783 57.740 0.00 0.00 - 0.0 0.0 0 0 0 0 0.05 0.0 0.00 0.00	- 216 217.6 218 usda/04044		usda/04044
F	corn oil	maize oil	fat	oil		vegan,vegetarian	100	900 0.00 100.00 12.948 - 27.576 54.677 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04518		usda/04518
F	groundnut oil	peanut oil;arachide oil	fat	oil	peanuts	vegan,vegetarian	100	884 0.00 100.00 16.900 - 46.200 32.000 0.00 0.00 - 0.0 0.0 0 0 0 0 0.03 0.0 0.00 0.00	- 216 usda/04042		usda/04042
F	sesame oil	toasted sesame oil;dark sesame oil;asian sesame oil	fat	oil	sesame	vegan,vegetarian	100	884 0.00 100.00 14.200 - 39.700 41.700 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04058		usda/04058
F	coconut oil	virgin coconut oil;extra-virgin coconut oil;refined coconut oil;solid coconut oil	fat	oil	coconut	vegan,vegetarian	100	892 0.00 99.06 82.475 0.028 6.332 1.702 0.00 0.00 - 0.0 0.0 0 0 0 1 0.05 0.0 0.03 0.03	- 216 217.6 218 usda/04047		usda/04047
F	palm oil		fat	oil		vegan,vegetarian	100	884 0.00 100.00 49.300 - 37.000 9.300 0.00 0.00 - 0.0 0.0 0 0 0 0 0.01 - 0.00 0.00	- 216 216 217.6 usda/04055		usda/04055
F	grapeseed oil	grape seed oil	fat	oil		vegan,vegetarian	100	884 0.00 100.00 9.600 - 16.100 69.900 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 - 0.00 0.00	- 216 217.6 218 usda/04517		usda/04517
F	safflower oil		fat	oil		vegan,vegetarian	100	884 0.00 100.00 6.203 - 14.355 74.623 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 - 0.00 0.00	- 216 217.6 218 usda/04510		usda/04510
F	rice bran oil		fat	oil		vegan,vegetarian	100	884 0.00 100.00 19.700 - 39.300 35.000 0.00 0.00 - 0.0 0.0 0 0 0 0 0.07 - 0.00 0.00	- 216 217.6 218 usda/04037		usda/04037
F	cottonseed oil		fat	oil		vegan,vegetarian	100	884 0.00 100.00 25.900 - 17.800 51.900 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04502		usda/04502
F	walnut oil		fat	oil	walnut	vegan,vegetarian	100	884 0.00 100.00 9.100 - 22.800 63.300 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04528		usda/04528
F	hazelnut oil		fat	oil	hazelnut	vegan,vegetarian	100	884 0.00 100.00 7.400 - 78.000 10.200 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 - 0.00 0.00	- 216 217.6 218 usda/04532		usda/04532
F	almond oil	sweet almond oil	fat	oil	almond	vegan,vegetarian	100	884 0.00 100.00 8.200 - 69.900 17.400 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04529		usda/04529
F	pumpkin seed oil		fat	oil		vegan,vegetarian		884 0 100 - - - - 0 0 - 0 - - - - - - - 0	- 215.295295215 217.66117758 220.027059945 practice		memory
F	avocado oil		fat	oil		vegan,vegetarian	100	884 0.00 100.00 11.560 - 70.554 13.486 0.00 - - 0.0 - - 0 0 0 0.00 - 0.00 0.00	- 216 218 224 usda/04581		usda/04581
F	flaxseed oil	linseed oil	fat	oil		vegan,vegetarian	100	884 0.11 99.98 8.976 0.094 18.438 67.849 0.00 0.00 - 0.0 0.0 0 0 0 1 0.00 0.0 0.12 0.00	- 217.6 217.8 218 usda/42231		usda/42231
F	mustard oil		fat	oil	mustard	vegan,vegetarian	100	884 0.00 100.00 11.582 - 59.187 21.230 0.00 - - 0.0 - - 0 0 0 0.00 - 0.00 0.00	- 216 218 224 usda/04583		usda/04583
F	wheatgerm oil	wheat germ oil	fat	oil	wheat	vegan,vegetarian	100	884 0.00 100.00 18.800 - 15.100 61.700 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04038		usda/04038
F	truffle oil		fat	oil	?	vegan,vegetarian		884 0 100 - - - - 0 0 - 0 - - - - - - - 0	- 215.295295215 217.66117758 220.027059945 practice		memory
F	chilli oil	chili oil	fat	oil	?	vegan,vegetarian		884 0 100 - - - - 0 0 - 0 - - - - - - - 0	- 215.295295215 217.66117758 220.027059945 practice		memory
F	argan oil		fat	oil		vegan,vegetarian		884 0 100 - - - - 0 0 - 0 - - - - - - - 0	- 215.295295215 217.66117758 220.027059945 practice		memory
F	oil spray	cooking spray;non-stick cooking spray	fat	oil	?	vegan,vegetarian		884 0 100 - - - - 0 0 - 0 - - - - - - - 0			memory
F	whole milk	full-fat milk;full-cream milk;whole cow's milk;homogenised milk;3.5 % milk;whole milk 3.25 % fat	dairy,liquid	milk	milk	vegetarian,animal	100	61 3.15 3.27 1.865 - 0.812 0.195 4.78 5.05 - 0.0 0.0 10 43 132 113 0.03 0.1 88.13 0.67	- 227 244 244 usda/01211,mill,cakebible		usda/01211
F	semi-skimmed milk	half-fat milk;reduced-fat milk;2 % milk;two percent milk	dairy,liquid	milk	milk	vegetarian,animal	100	50 3.30 1.98 1.257 0.085 0.560 0.073 4.80 5.06 - 0.0 0.0 8 47 140 120 0.02 0.0 89.21 0.71	- 227 246 246 usda/01174,mill		usda/01174
F	low-fat milk	1 % milk;one percent milk	dairy,liquid	milk	milk	vegetarian,animal	100	42 3.37 0.97 0.633 - 0.277 0.035 4.99 5.20 - 0.0 0.0 5 44 150 125 0.03 0.0 89.92 0.75	- 244 usda/01175		usda/01175
F	skimmed milk	skim milk;fat-free milk;nonfat milk;non-fat milk	dairy,liquid	milk	milk	vegetarian,animal	100	34 3.37 0.08 0.051 - 0.021 0.003 4.96 5.09 - 0.0 0.0 2 42 156 122 0.03 0.0 90.84 0.75	- 227 245 245 usda/01151,mill		usda/01151
F	raw milk	unpasteurised milk;unpasteurized milk;raw cow's milk	dairy,liquid	milk	milk	vegetarian,animal,unpasteurised	100	64 3.28 3.66 2.278 - 1.057 0.136 4.65 - - 0.0 0.0 14 49 151 119 0.05 - 87.69 0.72	- 244 usda/01078		usda/01078
F	goat's milk	goat milk	dairy,liquid	milk	milk	vegetarian,animal	100	69 3.56 4.14 2.667 - 1.109 0.149 4.45 4.45 - 0.0 0.0 11 50 204 134 0.05 1.3 87.03 0.82	- 244 usda/01106		usda/01106
F	sheep's milk	ewe's milk;sheep milk	dairy,liquid	milk	milk	vegetarian,animal	100	108 5.98 7.00 4.603 - 1.724 0.308 5.36 - - 0.0 - 27 44 137 193 0.10 - 80.70 0.96	- 245 usda/01109		usda/01109
F	buffalo milk		dairy,liquid	milk	milk	vegetarian,animal	100	97 3.75 6.89 4.597 - 1.787 0.146 5.18 - - 0.0 - 19 52 178 169 0.12 - 83.39 0.79	- 244 usda/01108		usda/01108
F	buttermilk	cultured buttermilk;low-fat buttermilk	dairy,liquid	milk	milk	vegetarian,animal	100	40 3.31 0.88 0.548 - 0.254 0.033 4.79 4.79 - 0.0 0.0 4 190 151 116 0.05 0.0 90.13 0.89	- 244.8 244.9 245 usda/01088		usda/01088
F	whole-milk buttermilk	full-fat buttermilk	dairy,liquid	milk	milk	vegetarian,animal	100	62 3.21 3.31 1.899 - 0.827 0.198 4.88 4.88 - 0.0 0.0 11 105 135 115 0.03 1.3 87.91 0.68	- 245 usda/01230		usda/01230
F	evaporated milk	unsweetened condensed milk;tinned evaporated milk	dairy,liquid	milk	milk	vegetarian,animal	100	135 6.81 7.56 4.591 - 2.335 0.245 10.04 10.04 - 0.0 0.0 29 106 303 261 0.19 0.1 74.04 1.55	- 252 usda/01214		usda/01214
F	condensed milk	sweetened condensed milk;tinned condensed milk	dairy,sugar	milk	milk	vegetarian,animal	100	321 7.91 8.70 5.486 - 2.427 0.337 54.40 54.40 - 0.0 0.0 34 127 371 284 0.19 0.2 27.16 1.83	- 305.6 305.8 306 usda/01095		usda/01095
F	kefir	milk kefir	dairy,liquid	milk	milk	vegetarian,animal		52 3.59 0.96 0.596 - 0.286 0.047 7.48 6.91 - 0 0 5 38 159 124 0.04 1 87.26	- 238.954118865 242.5029424125 246.05176596 practice		survey/11115400
F	whey	sweet whey;liquid whey	dairy,liquid	milk	milk	vegetarian,animal	100	27 0.85 0.36 0.230 - 0.100 0.011 5.14 5.14 - 0.0 0.0 2 54 161 47 0.06 - 93.12 0.53	- 246 usda/01114		usda/01114
F	acid whey		dairy,liquid	milk	milk	vegetarian,animal	100	24 0.76 0.09 0.057 - 0.025 0.004 5.12 5.12 - 0.0 0.0 1 48 143 103 0.08 - 93.42 0.61	- 246 usda/01112		usda/01112
F	ayran		dairy,liquid	milk	milk	vegetarian,animal			- 238.954118865 242.5029424125 246.05176596 practice		
F	eggnog	egg nog	dairy,liquid	milk	milk,eggs	vegetarian,animal	100	88 4.55 4.19 2.591 - 1.302 0.198 8.05 8.05 - 0.0 0.0 59 54 165 130 0.20 1.2 82.54 0.67	- 254 254.2 254.4 usda/01057		usda/01057
F	chocolate milk		dairy,liquid	milk	milk	vegetarian,animal	100	83 3.17 3.39 2.104 - 0.990 0.124 10.34 9.54 - 0.8 0.0 12 60 167 112 0.24 1.3 82.30 0.80	- 249.6 249.8 250 usda/01102		usda/01102
F	skimmed milk powder	dried skimmed milk;nonfat dry milk;non-fat dry milk;skim milk powder;nonfat milk powder;instant nonfat dry milk;dry milk	dairy	milk powder	milk	vegetarian,animal	100	358 35.10 0.72 0.470 - 0.190 0.030 52.19 52.19 - 0.0 0.0 18 549 1705 1231 0.31 0.0 3.96 8.03	- 68 109.5 151 usda/01155,bba		usda/01155
F	whole milk powder	dried whole milk;full-fat milk powder;full-cream milk powder;dry whole milk	dairy	milk powder	milk	vegetarian,animal	100	496 26.32 26.71 16.742 - 7.924 0.665 38.42 38.42 - 0.0 0.0 97 371 1330 912 0.47 0.5 2.47 6.08	- 128 usda/01212		usda/01212
F	buttermilk powder	dried buttermilk	dairy	milk powder	milk	vegetarian,animal	100	387 34.30 5.78 3.598 - 1.669 0.215 49.00 49.00 - 0.0 0.0 69 517 1592 1184 0.30 0.5 2.97 7.95	- 104 120 120 usda/01094		usda/01094
F	whey powder	dried whey	dairy	milk powder	milk	vegetarian,animal	100	353 12.93 1.07 0.684 - 0.297 0.034 74.46 74.46 - 0.0 0.0 6 1079 2080 796 0.88 0.0 3.19 8.35	- 120 132.5 145 usda/01115		usda/01115
F	malted milk powder		dairy	milk powder	milk,wheat,barley	vegetarian,animal					
F	single cream	light cream;table cream;coffee cream;pouring cream	dairy,liquid	cream	milk	vegetarian,animal	100	191 2.96 19.10 10.176 0.625 4.525 0.789 2.82 3.67 - 0.0 0.0 59 72 136 91 0.05 1.1 74.51 0.61	- 240 usda/01050		usda/01050
F	half-and-half	half cream	dairy,liquid	cream	milk	vegetarian,animal	100	123 3.13 10.39 7.032 0.464 3.320 0.554 4.73 4.13 - 0.0 0.0 35 61 132 107 0.05 0.0 81.24 0.51	- 240 241.8 242 usda/01049		usda/01049
F	whipping cream	heavy cream;heavy whipping cream;thickened cream	dairy,liquid	cream	milk	vegetarian,animal	100	340 2.84 36.08 23.032 1.236 9.101 1.570 2.74 2.92 - 0.0 0.0 113 27 95 66 0.10 1.6 57.81 0.53	- 232 238.2 240 usda/01053,cakebible;whipped 120 usda/01053		usda/01053
F	light whipping cream		dairy,liquid	cream	milk	vegetarian,animal	100	292 2.17 30.91 19.337 - 9.093 0.884 2.96 2.96 - 0.0 0.0 111 34 97 69 0.03 0.6 63.50 0.46	- 239 239 240 usda/01052;whipped 120 usda/01052		usda/01052
F	double cream	thick double cream;extra-thick double cream	dairy,liquid	cream	milk	vegetarian,animal		445 1.7 48 30 - - - 2.6 2.6 - 0 - - - - - - - 47	- 231.85647177 235.4052953175 238.954118865 practice		memory
F	clotted cream	devonshire cream	dairy,liquid	cream	milk	vegetarian,animal		586 1.6 63.5 39.7 - - - 2.3 2.3 - 0	- 224 232 240 practice		memory
F	whipped cream	squirty cream;aerosol cream	dairy,liquid	cream	milk	vegetarian,animal	100	257 3.20 22.22 13.831 - 6.418 0.825 12.49 8.00 - 0.0 0.0 76 8 147 101 0.05 0.4 61.33 0.76	- 48 60 60 usda/01054		usda/01054
F	soured cream	sour cream;full-fat sour cream;smetana	dairy,liquid	cream	milk	vegetarian,animal	100	198 2.44 19.35 10.140 0.796 4.594 0.800 4.63 3.41 0.00 0.0 0.0 59 31 125 101 0.07 0.0 73.07 0.51	- 192 230 230 usda/01056,mill		usda/01056
F	crème fraîche	full-fat crème fraîche;french-style soured cream	dairy,liquid	cream	milk	vegetarian,animal		299 2.2 30 20 - - - 2.8 2.8 - 0	- 227.12470704 234.222354135 241.32000123 practice		memory
F	reduced-fat crème fraîche	half-fat crème fraîche;light crème fraîche	dairy,liquid	cream	milk	vegetarian,animal		165 2.7 15 10 - - - 4.4 4.2	- 231.85647177 237.7711776825 243.685883595 practice		memory
F	light sour cream	half-fat soured cream;reduced-fat sour cream	dairy,liquid	cream	milk	vegetarian,animal	100	181 7.00 14.10 8.700 - 4.100 0.500 7.00 0.30 - 0.0 0.0 35 70 211 141 0.06 0.3 71.00 0.90	- 192 211 230 usda/01178		usda/01178
F	coffee creamer	non-dairy creamer	dairy,liquid	cream	?						
F	natural yoghurt	plain yogurt;plain yoghurt;natural yogurt;whole-milk yogurt;whole-milk yoghurt;plain whole-milk yogurt;plain whole-milk yoghurt;full-fat yogurt;full-fat yoghurt;full-fat natural yogurt;full-fat natural yoghurt;set yogurt;set yoghurt;bio yogurt;bio yoghurt;live yogurt;live yoghurt;unsweetened yogurt;unsweetened yoghurt;plain full-fat yogurt;plain full-fat yoghurt	dairy	yoghurt	milk	vegetarian,animal	100	61 3.47 3.25 2.096 - 0.893 0.092 4.66 4.66 - 0.0 0.0 13 46 155 121 0.05 0.1 87.90 0.72	- 245 usda/01116		usda/01116
F	low-fat yoghurt	low-fat yogurt;plain low-fat yogurt;plain low-fat yoghurt;low-fat natural yogurt;low-fat natural yoghurt	dairy	yoghurt	milk	vegetarian,animal	100	63 5.25 1.55 1.000 - 0.426 0.044 7.04 7.04 - 0.0 0.0 6 70 234 183 0.08 0.0 85.07 1.09	- 245 usda/01117		usda/01117
F	fat-free yoghurt	non-fat yogurt;non-fat yoghurt;nonfat yogurt;nonfat yoghurt;fat-free yogurt;plain nonfat yogurt;plain nonfat yoghurt;0 % fat yogurt;0 % fat yoghurt	dairy	yoghurt	milk	vegetarian,animal	100	56 5.73 0.18 0.116 - 0.049 0.005 7.68 7.68 - 0.0 0.0 2 77 255 199 0.09 0.0 85.23 1.18	- 245 usda/01118		usda/01118
F	Greek yoghurt	greek yogurt;greek-style yogurt;greek-style yoghurt;strained yogurt;strained yoghurt;plain greek yogurt;plain greek yoghurt;whole-milk greek yogurt;whole-milk greek yoghurt;full-fat greek yogurt;full-fat greek yoghurt;thick yogurt;thick yoghurt	dairy	yoghurt	milk	vegetarian,animal	100	97 9.00 5.00 2.395 0.000 2.136 0.469 3.98 4.00 - 0.0 0.0 13 35 141 100 0.00 0.0 81.30 0.72	- 235 247.5 260 practice		usda/01293
F	low-fat Greek yoghurt	low-fat greek yogurt;2 % greek yogurt;2 % greek yoghurt;plain low-fat greek yogurt;plain low-fat greek yoghurt	dairy	yoghurt	milk	vegetarian,animal	100	73 9.95 1.92 1.230 0.060 0.486 0.076 3.94 3.56 0.00 0.0 0.0 10 34 141 115 0.04 0.0 83.56 0.63	- 235 247.5 260 practice		usda/01287
F	fat-free Greek yoghurt	fat-free greek yogurt;nonfat greek yogurt;nonfat greek yoghurt;non-fat greek yogurt;non-fat greek yoghurt;0 % fat greek yogurt;0 % fat greek yoghurt;0 % greek yogurt;0 % greek yoghurt	dairy	yoghurt	milk	vegetarian,animal	100	59 10.19 0.39 0.117 0.006 0.053 0.012 3.60 3.24 - 0.0 0.0 5 36 141 110 0.07 0.0 85.10 0.72	- 235 247.5 260 practice		usda/01256
F	vanilla yoghurt	vanilla yogurt	dairy	yoghurt	milk	vegetarian,animal	100	85 4.93 1.25 0.806 - 0.343 0.036 13.80 13.80 - 0.0 0.0 5 66 219 171 0.07 0.0 79.00 1.02	- 245 usda/01119		usda/01119
F	sheep's milk yoghurt	sheep's yogurt;sheep's yoghurt;ewe's milk yogurt;ewe's milk yoghurt	dairy	yoghurt	milk	vegetarian,animal			- 235 247.5 260 practice		
F	goat's milk yoghurt	goat's yogurt;goat's yoghurt	dairy	yoghurt	milk	vegetarian,animal			- 235 247.5 260 practice		
F	skyr	icelandic yogurt;icelandic yoghurt;plain skyr	dairy	yoghurt	milk	vegetarian,animal		63 11 0.2 0.1 - - - 4 4 - - - - - - - - - 84	- 235 247.5 260 practice		memory
F	labneh	strained yoghurt cheese;yogurt cheese	dairy	yoghurt	milk	vegetarian,animal			- 240 250 260 practice		
F	quark	low-fat quark;plain quark;curd cheese;skimmed-milk quark;magerquark;topfen	dairy	yoghurt	milk	vegetarian,animal		67 12 0.2 0.1 - - - 4 4 - 0 - - - - - - - 82	- 240 250 260 practice		memory
F	full-fat quark	40 % quark;cream quark	dairy	yoghurt	milk	vegetarian,animal			- 235 247.5 260 practice		
F	fromage frais	plain fromage frais;fromage blanc	dairy	yoghurt	milk	vegetarian,animal			- 235 242.5 250 practice		
F	cream cheese	full-fat cream cheese;soft cheese;full-fat soft cheese;soft cream cheese;plain cream cheese	dairy	cheese,soft cheese	milk	animal,vegetarian	100	350 6.15 34.44 20.213 - 8.907 1.483 5.52 3.76 0.35 0.0 0.0 101 314 132 97 0.11 0.0 52.62 1.27	- 232 usda/01017;whipped 160 usda/01017		usda/01017
F	low-fat cream cheese	light cream cheese;reduced-fat cream cheese;light soft cheese;neufchâtel;neufchatel cheese	dairy	cheese,soft cheese	milk	animal,vegetarian	100	253 9.15 22.78 12.790 - 5.784 0.970 3.59 3.19 0.50 0.0 - 74 334 152 117 0.13 - 63.11 1.37			usda/01031
F	cottage cheese	creamed cottage cheese;full-fat cottage cheese;large-curd cottage cheese;small-curd cottage cheese	dairy	cheese,soft cheese	milk	animal	100	98 11.12 4.30 1.718 - 0.778 0.123 3.38 2.67 - 0.0 0.0 17 364 104 83 0.07 0.1 79.79 1.41	- 210 217.5 225 usda/01012		usda/01012
F	low-fat cottage cheese	reduced-fat cottage cheese;2 % cottage cheese	dairy	cheese,soft cheese	milk	animal	100	81 10.45 2.27 1.235 0.067 0.516 0.083 4.76 4.00 - 0.0 0.0 12 308 125 111 0.13 0.0 81.24 1.27	- 226 usda/01015		usda/01015
F	ricotta	ricotta cheese;whole-milk ricotta;whole-milk ricotta cheese;fresh ricotta;full-fat ricotta	dairy	cheese,soft cheese	milk	animal	100	174 11.26 12.98 8.295 - 3.627 0.385 3.04 0.27 - 0.0 0.0 51 84 105 207 0.38 0.2 71.70 1.02	- 226.796185 246 248 usda/01036,mill		usda/01036
F	part-skim ricotta	part-skim ricotta cheese;low-fat ricotta	dairy	cheese,soft cheese	milk	animal	100	138 11.39 7.91 4.927 - 2.314 0.260 5.14 0.31 - 0.0 0.0 31 99 125 272 0.44 0.1 74.41 1.15	- 246 247 248 usda/01037		usda/01037
F	mascarpone	mascarpone cheese	dairy	cheese,soft cheese	milk	animal		404 4.2 41.5 28 - - - 3.6 3.6 - 0	- 227 233.5 240 practice		memory
F	Cheddar	cheddar cheese;mature cheddar;mature cheddar cheese;sharp cheddar;sharp cheddar cheese;strong cheddar;mild cheddar;mild cheddar cheese;extra-mature cheddar;extra-sharp cheddar;extra-sharp cheddar cheese;white cheddar;medium cheddar;vintage cheddar;farmhouse cheddar	dairy	cheese,hard cheese	milk	animal	100	404 22.87 33.31 18.867 0.917 9.246 1.421 3.09 0.48 - 0.0 0.0 99 653 76 710 0.14 0.6 37.02 3.71	- 113 113.3980925 132 usda/01009,mill;diced 132 usda/01009;grated 113 113.19904625 113.3980925 usda/01009,mill;melted 244 usda/01009	slice/- 28 usda/01009	usda/01009
F	reduced-fat Cheddar	half-fat cheddar;low-fat cheddar;low-fat cheddar cheese;reduced-fat cheddar cheese	dairy	cheese,hard cheese	milk	animal	100	309 27.35 20.41 12.602 0.733 5.304 0.893 4.06 0.26 - 0.0 0.0 76 628 63 761 0.12 0.3 44.29 3.89	- 95 107.5 120 practice;grated 95 107.5 120 practice	slice/- 21 usda/01260	usda/01260
F	Cheshire cheese	cheshire	dairy	cheese,hard cheese	milk	animal	100	387 23.37 30.60 19.475 - 8.671 0.870 4.78 - - 0.0 - 103 700 95 643 0.21 - 37.65 3.60	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01010
F	Lancashire cheese	lancashire	dairy	cheese,hard cheese	milk	animal	100	387 23.37 30.60 19.475 - 8.671 0.870 4.78 - - 0.0 - 103 700 95 643 0.21 - 37.65 3.60	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01010/stand-in
F	Wensleydale	wensleydale cheese	dairy	cheese,hard cheese	milk	animal	100	387 23.37 30.60 19.475 - 8.671 0.870 4.78 - - 0.0 - 103 700 95 643 0.21 - 37.65 3.60	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01010/stand-in
F	Caerphilly	caerphilly cheese	dairy	cheese,hard cheese	milk	animal	100	387 23.37 30.60 19.475 - 8.671 0.870 4.78 - - 0.0 - 103 700 95 643 0.21 - 37.65 3.60	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01010/stand-in
F	Double Gloucester	double gloucester cheese	dairy	cheese,hard cheese	milk	animal	100	404 22.87 33.31 18.867 0.917 9.246 1.421 3.09 0.48 - 0.0 0.0 99 653 76 710 0.14 0.6 37.02 3.71	- 113 122.5 132 usda/01009;diced 132 usda/01009;grated 113 usda/01009;melted 244 usda/01009	slice/- 28 usda/01009	usda/01009/stand-in
F	Red Leicester	red leicester cheese	dairy	cheese,hard cheese	milk	animal	100	404 22.87 33.31 18.867 0.917 9.246 1.421 3.09 0.48 - 0.0 0.0 99 653 76 710 0.14 0.6 37.02 3.71	- 113 122.5 132 usda/01009;diced 132 usda/01009;grated 113 usda/01009;melted 244 usda/01009	slice/- 28 usda/01009	usda/01009/stand-in
F	Colby	colby cheese	dairy	cheese,hard cheese	milk	animal	100	394 23.76 32.11 20.218 - 9.280 0.953 2.57 0.52 - 0.0 0.0 95 604 127 685 0.76 0.6 38.20 3.36	- 113 122.5 132 usda/01011;diced 132 usda/01011;grated 113 usda/01011	slice/- 28 usda/01011	usda/01011
F	Monterey Jack	monterey jack cheese;jack cheese	dairy	cheese,hard cheese	milk	animal	100	373 24.48 30.28 19.066 - 8.751 0.899 0.68 0.50 - 0.0 0.0 89 600 81 746 0.72 0.6 41.01 3.55	- 113 122.5 132 usda/01025;diced 132 usda/01025;grated 113 usda/01025	slice/- 28 usda/01025	usda/01025
F	Parmesan	parmesan cheese;hard parmesan;parmigiano;parmigiano reggiano;block of parmesan	dairy	cheese,hard cheese,rennet cheese	milk	animal,rennet	100	392 35.75 25.83 16.410 - 7.515 0.569 3.22 0.80 - 0.0 0.0 68 1376 92 1184 0.82 0.5 29.16 6.04	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01033
F	grated Parmesan	freshly grated parmesan;grated parmesan cheese;finely grated parmesan	dairy	cheese,hard cheese,rennet cheese	milk	animal,rennet	100	420 28.42 27.84 15.371 0.876 7.130 1.386 13.91 0.07 - 0.0 0.0 86 1804 180 853 0.49 0.5 22.65 7.18	- 80 99.2233309375 100 usda/01032,mill		usda/01032
F	Grana Padano	grana padano cheese;grana	dairy	cheese,hard cheese,rennet cheese	?milk	animal,rennet	100	392 35.75 25.83 16.410 - 7.515 0.569 3.22 0.80 - 0.0 0.0 68 1376 92 1184 0.82 0.5 29.16 6.04	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01033/stand-in
F	Pecorino	pecorino romano;romano cheese;pecorino cheese;pecorino romano cheese	dairy	cheese,hard cheese,rennet cheese	milk	animal,rennet	100	387 31.80 26.94 17.115 - 7.838 0.593 3.63 0.73 - 0.0 0.0 104 1433 86 1064 0.77 0.5 30.91 6.72	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01038
F	Gruyère	gruyère cheese	dairy	cheese,hard cheese,rennet cheese	milk	animal,rennet	100	413 29.81 32.34 18.913 - 10.043 1.733 0.36 0.36 - 0.0 0.0 110 714 81 1011 0.17 0.6 33.19 4.30	- 108 120 132 usda/01023;diced 132 usda/01023;grated 108 usda/01023	slice/- 28 usda/01023	usda/01023
F	Emmental	emmental cheese;emmenthal;emmenthaler;emmental-style cheese	dairy	cheese,hard cheese	milk	animal	100	393 26.96 30.99 18.227 0.987 8.046 1.341 1.44 0.00 - 0.0 0.0 93 187 72 890 0.13 0.0 37.63 2.97	- 108 120 132 usda/01040;diced 132 usda/01040;grated 108 usda/01040;melted 244 usda/01040	slice/- 28 usda/01040	usda/01040/stand-in
F	Swiss cheese		dairy	cheese,hard cheese	milk	animal	100	393 26.96 30.99 18.227 0.987 8.046 1.341 1.44 0.00 - 0.0 0.0 93 187 72 890 0.13 0.0 37.63 2.97	- 108 120 132 usda/01040;diced 132 usda/01040;grated 108 usda/01040;melted 244 usda/01040	slice/- 28 usda/01040	usda/01040
F	Comté	comté cheese	dairy	cheese,hard cheese	milk	animal,rennet	100	413 29.81 32.34 18.913 - 10.043 1.733 0.36 0.36 - 0.0 0.0 110 714 81 1011 0.17 0.6 33.19 4.30	- 108 120 132 usda/01023;diced 132 usda/01023;grated 108 usda/01023	slice/- 28 usda/01023	usda/01023/stand-in
F	Manchego	manchego cheese	dairy	cheese,hard cheese	milk	animal			- 95 107.5 120 practice;grated 95 107.5 120 practice		
F	Asiago	asiago cheese	dairy	cheese,hard cheese	milk	animal	100	392 35.75 25.83 16.410 - 7.515 0.569 3.22 0.80 - 0.0 0.0 68 1376 92 1184 0.82 0.5 29.16 6.04	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01033/stand-in
F	raclette cheese	raclette	dairy	cheese,hard cheese	milk	animal	100	389 25.60 31.14 19.196 - 8.687 1.654 1.55 1.55 - 0.0 0.0 116 800 64 550 0.23 0.6 37.92 3.79	- 108 120 132 usda/01020;diced 132 usda/01020;grated 108 usda/01020	slice/- 28 usda/01020	usda/01020/stand-in
F	Edam	edam cheese	dairy	cheese,hard cheese	milk	animal	100	357 24.99 27.80 17.572 - 8.125 0.665 1.43 1.43 - 0.0 0.0 89 812 188 731 0.44 0.5 41.56 4.22	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01018
F	Gouda	gouda cheese	dairy	cheese,hard cheese	milk	animal	100	356 24.94 27.44 17.614 - 7.747 0.657 2.22 2.22 - 0.0 0.0 114 819 121 700 0.24 0.5 41.46 3.94	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01022
F	fontina	fontina cheese	dairy	cheese,hard cheese	milk	animal	100	389 25.60 31.14 19.196 - 8.687 1.654 1.55 1.55 - 0.0 0.0 116 800 64 550 0.23 0.6 37.92 3.79	- 108 120 132 usda/01020;diced 132 usda/01020;grated 108 usda/01020	slice/- 28 usda/01020	usda/01020
F	provolone	provolone cheese	dairy	cheese,hard cheese	milk	animal	100	351 25.58 26.62 17.078 - 7.393 0.769 2.14 0.56 - 0.0 0.0 69 876 138 756 0.52 0.5 40.95 4.71	- 132 usda/01035;diced 132 usda/01035	slice/- 28 usda/01035	usda/01035
F	Tilsit	tilsit cheese;tilsiter	dairy	cheese,hard cheese	milk	animal	100	340 24.41 25.98 16.775 - 7.136 0.721 1.88 - - 0.0 0.0 102 753 65 700 0.23 - 42.86 4.87	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01041
F	Port Salut	port salut cheese	dairy	cheese	milk	animal	100	352 23.78 28.20 16.691 - 9.338 0.729 0.57 0.57 - 0.0 0.0 123 534 136 650 0.43 0.5 45.45 2.00	- 113 122.5 132 usda/01034;diced 132 usda/01034;grated 113 usda/01034	slice/- 28 usda/01034	usda/01034
F	Munster	muenster cheese;munster cheese	dairy	cheese	milk	animal	100	368 23.41 30.04 19.113 - 8.711 0.661 1.12 1.12 - 0.0 0.0 96 628 134 717 0.41 0.6 41.77 3.66	- 113 122.5 132 usda/01030;diced 132 usda/01030;grated 113 usda/01030	slice/- 28 usda/01030	usda/01030
F	Limburger	limburger cheese	dairy	cheese	milk	animal	100	327 20.05 27.25 16.746 - 8.606 0.495 0.49 0.49 - 0.0 0.0 90 800 128 497 0.13 0.5 48.42 3.79	- 134 usda/01024		usda/01024
F	brick cheese		dairy	cheese	milk	animal	100	371 23.24 29.68 18.764 - 8.598 0.784 2.79 0.51 - 0.0 0.0 94 560 136 674 0.43 0.5 41.11 3.18	- 113 122.5 132 usda/01005;diced 132 usda/01005;grated 113 usda/01005	slice/- 28 usda/01005	usda/01005
F	brown cheese	gjetost;brunost;whey cheese	dairy	cheese,hard cheese	milk	animal	100	466 9.65 29.51 19.160 - 7.879 0.938 42.65 - - 0.0 - 94 600 1409 400 0.52 - 13.44 4.75	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01021
F	processed cheese	american cheese;processed cheese slices;cheese slices	dairy	cheese	?milk	animal	100	366 18.13 30.71 18.057 1.144 8.236 1.286 4.78 2.26 - 0.0 0.0 100 1671 132 1045 0.63 7.5 39.61 6.78	- 113 126.5 140 usda/01042;diced 140 usda/01042;grated 113 usda/01042;melted 244 usda/01042	slice/- 21 24.5 28 usda/01042	usda/01042
F	mozzarella	fresh mozzarella;mozzarella cheese;buffalo mozzarella;mozzarella ball;whole-milk mozzarella;bocconcini	dairy	cheese,soft cheese	milk	animal	100	300 22.17 22.35 13.152 - 6.573 0.765 2.19 1.03 - 0.0 0.0 79 627 76 505 0.44 0.4 50.01 3.28	- 112 usda/01026;grated 112 usda/01026	slice/- 85/3 usda/01026	usda/01026
F	low-moisture mozzarella	shredded mozzarella;grated mozzarella;pizza mozzarella;hard mozzarella	dairy	cheese	milk	animal	100	318 21.60 24.64 15.561 - 7.027 0.778 2.47 1.01 - 0.0 0.0 89 710 75 575 0.20 0.5 48.38 2.91			usda/01027
F	part-skim mozzarella	part-skim mozzarella cheese;low-moisture part-skim mozzarella;low-moisture part-skim mozzarella cheese	dairy	cheese	milk	animal	100	295 23.75 19.78 11.295 0.720 5.741 1.019 5.58 1.90 - 0.0 0.0 64 666 188 697 0.22 0.4 47.07 3.83	- 113 122.5 132 usda/01029;diced 132 usda/01029;grated 113 usda/01029	slice/- 28 usda/01029	usda/01029
F	burrata		dairy	cheese,soft cheese	milk	animal					
F	feta	feta cheese;greek feta;sheep's feta	dairy	cheese,soft cheese	milk	animal	100	264 14.21 21.28 14.946 - 4.623 0.591 4.09 4.09 - 0.0 0.0 89 917 62 493 0.65 0.4 55.22 5.20	- 150 usda/01019,practice;crumbled 150 usda/01019,practice	wedge/- 38 usda/01019	usda/01019
F	halloumi	halloumi cheese;grilling cheese	dairy	cheese	milk	animal		315 21.5 24.7 17 - - - 1.8 1.5 - - - - 1100 - - - - 48			memory
F	paneer	indian cheese;paneer cheese	dairy	cheese	milk	animal		321 20 25 - - - - 3.6			memory
F	queso fresco		dairy	cheese,soft cheese	milk	animal	100	299 18.09 23.82 12.940 0.834 5.966 1.106 2.98 2.32 - 0.0 0.0 69 751 129 566 0.20 2.7 51.42 3.68	- 122 usda/01228;crumbled 122 usda/01228		usda/01228
F	queso blanco		dairy	cheese,soft cheese	milk	animal	100	310 20.38 24.31 13.661 0.890 6.459 1.149 2.53 1.76 - - - 70 704 126 690 0.18 0.7 48.70 4.07	- 118 usda/01229;crumbled 118 usda/01229		usda/01229
F	cotija	cotija cheese;queso cotija;queso añejo	dairy	cheese	milk	animal	100	366 20.00 30.00 17.500 0.000 8.333 1.187 3.97 0.00 - 0.0 0.0 100 1400 125 800 0.00 0.5 38.00 8.03	- 120 usda/01267		usda/01267
F	Brie	brie cheese	dairy	cheese,soft cheese	milk	animal,soft-ripened-cheese	100	334 20.75 27.68 17.410 - 8.013 0.826 0.45 0.45 - 0.0 0.0 100 629 152 184 0.50 0.5 48.42 2.70	- 144 usda/01006;melted 240 usda/01006;sliced 144 usda/01006		usda/01006
F	Camembert	camembert cheese	dairy	cheese,soft cheese	milk	animal,soft-ripened-cheese	100	300 19.80 24.26 15.259 - 7.023 0.724 0.46 0.46 - 0.0 0.0 72 842 187 388 0.33 0.4 51.80 3.68	- 246 usda/01007	wedge/- 38 usda/01007	usda/01007
F	Taleggio	taleggio cheese	dairy	cheese,soft cheese	milk	animal,soft-ripened-cheese	100	389 25.60 31.14 19.196 - 8.687 1.654 1.55 1.55 - 0.0 0.0 116 800 64 550 0.23 0.6 37.92 3.79	- 108 120 132 usda/01020;diced 132 usda/01020;grated 108 usda/01020	slice/- 28 usda/01020	usda/01020/stand-in
F	goat's cheese	goat cheese;soft goat's cheese;soft goat cheese;chèvre;fresh goat's cheese;fresh goat cheese;goat's curd	dairy	cheese,soft cheese	milk	animal	100	264 18.52 21.08 14.575 - 4.807 0.501 0.00 0.00 - 0.0 0.0 46 459 26 140 1.90 0.4 60.75 1.58	- 113 131.5 150 practice;crumbled 113 131.5 150 practice		usda/01159
F	hard goat's cheese	hard goat cheese;aged goat cheese	dairy	cheese,hard cheese	milk	animal	100	452 30.52 35.59 24.609 - 8.117 0.845 2.17 2.17 - 0.0 0.0 105 423 48 895 1.88 0.7 29.01 3.72	- 95 107.5 120 practice;grated 95 107.5 120 practice		usda/01156
F	goat's cheese log	semi-soft goat cheese;ripened goat's cheese	dairy	cheese,soft cheese	milk	animal,soft-ripened-cheese	100	364 21.58 29.84 20.639 - 6.808 0.709 0.12 0.12 - 0.0 0.0 79 415 158 298 1.62 0.5 45.52 2.94			usda/01157
F	blue cheese	crumbled blue cheese;danish blue;blue-veined cheese	dairy	cheese,blue cheese	milk	animal,soft-ripened-cheese	100	353 21.40 28.74 18.669 - 7.778 0.800 2.34 0.50 - 0.0 0.0 75 1146 256 528 0.31 0.5 42.41 5.11	- 135 usda/01004;crumbled 135 usda/01004		usda/01004
F	Stilton	stilton cheese;blue stilton	dairy	cheese,blue cheese	milk	animal		410 23.7 35 23 - - - 0.1 0.1 - - - - 780 - - - - 38	- 115 127.5 140 practice;crumbled 115 127.5 140 practice		memory
F	Gorgonzola	gorgonzola cheese;dolcelatte	dairy	cheese,blue cheese	milk	animal,soft-ripened-cheese	100	353 21.40 28.74 18.669 - 7.778 0.800 2.34 0.50 - 0.0 0.0 75 1146 256 528 0.31 0.5 42.41 5.11	- 115 127.5 140 practice;crumbled 115 127.5 140 practice		usda/01004/stand-in
F	Roquefort	roquefort cheese	dairy	cheese,blue cheese	milk	animal,soft-ripened-cheese,unpasteurised,rennet	100	369 21.54 30.64 19.263 - 8.474 1.320 2.00 - - 0.0 - 90 1809 91 662 0.56 - 39.38 6.44	- 115 127.5 140 practice;crumbled 115 127.5 140 practice		usda/01039
F	rennet	animal rennet;liquid rennet				animal,rennet					
F	vegetarian rennet	vegetable rennet				vegetarian					
F	vanilla ice cream	ice cream	dairy	ice cream	?milk	animal	100	207 3.50 11.00 6.790 - 2.969 0.452 23.60 21.22 - 0.7 0.0 44 80 199 128 0.09 0.2 61.00 0.90			usda/19095
F	oat drink	oat milk;barista oat milk;oat beverage	liquid	plant drink	oats	vegan,vegetarian		47 1 1.5 0.2 - - - 7.4 4 - 0.8 - - - - - - - 90	- 238.954118865 241.32000123 243.685883595 practice		memory
F	soya drink	soya milk;soy milk;soymilk;unsweetened soya milk;unsweetened soy milk;soy drink;soy beverage	liquid	plant drink	soybeans	vegan,vegetarian	100	54 3.27 1.75 0.205 0.000 0.401 0.961 6.28 3.99 - 0.6 0.0 0 51 118 25 0.64 0.0 88.05 0.65	- 243 243.9 244.8 usda/16120		usda/16120
F	almond drink	almond milk;unsweetened almond milk;almond beverage	liquid	plant drink	almond	vegan,vegetarian	100	15 0.59 1.10 0.000 - 0.708 0.236 0.58 0.00 - 0.0 0.0 0 71 67 197 0.35 1.0 97.05 0.68	- 262 usda/14091		usda/14091
F	rice drink	rice milk	liquid	plant drink		vegan,vegetarian	100	47 0.28 0.97 0.000 0.000 0.625 0.313 9.17 5.28 - 0.3 0.0 0 39 27 118 0.20 1.0 89.28 0.30	- 240 usda/14639		usda/14639
F	coconut drink	coconut milk drink;coconut milk beverage	liquid	plant drink	coconut	vegan,vegetarian		31 0.21 2.08 2.083 - 0 0 2.92 2.5 - 0 0 0 19 19 188 0.3 1 94.57	- 236.5882365 241.32000123 246.05176596 practice		survey/11370000
F	cashew drink	cashew milk	liquid	plant drink	cashew	vegan,vegetarian			- 236.5882365 241.32000123 246.05176596 practice		
F	hazelnut drink	hazelnut milk	liquid	plant drink	hazelnut	vegan,vegetarian			- 236.5882365 241.32000123 246.05176596 practice		
F	hemp drink	hemp milk	liquid	plant drink		vegan,vegetarian			- 236.5882365 241.32000123 246.05176596 practice		
F	oat cream	oat-based cream	liquid	plant drink	oats	vegan,vegetarian		150 1 13 1.5 - - - 6 3	- 231.85647177 236.5882365 241.32000123 practice		memory
F	soya cream	soy cream;soya single cream	liquid	plant drink	soybeans	vegan,vegetarian			- 231.85647177 236.5882365 241.32000123 practice		
F	soya yoghurt	soy yogurt;soy yoghurt;soya yogurt;plant yogurt;plant yoghurt		plant drink	soybeans	vegan,vegetarian	100	94 3.50 1.80 0.259 0.000 0.400 1.017 15.96 1.24 - 0.2 0.0 0 35 47 118 1.06 0.0 77.50 1.24	- 240 250 260 practice		usda/43476/stand-in
F	coconut yoghurt	coconut yogurt;coconut milk yogurt;coconut milk yoghurt		plant drink	?coconut	vegan,vegetarian		64 0.31 3.5 3.422 - 0.068 0.016 7.95 7.4 - 0 0 0 21 27 170 0.28 0.9 88.01			survey/42401100
F	vegan cream cheese			plant drink	?	vegan,vegetarian					
F	egg	whole egg;hen's egg;fresh egg;free-range egg;raw egg;chicken egg;beaten egg;whole eggs beaten;egg wash	egg	egg	eggs	raw-egg,vegetarian,animal	88	143 12.56 9.51 3.126 0.038 3.658 1.911 0.72 0.37 - 0.0 0.0 372 142 138 56 1.75 2.0 76.15 1.06	- 243 usda/01123	-/extra_large 56 usda/01123;-/jumbo 63 usda/01123;-/large@ 63 68 73 egg-grades;-/large 50 usda/01123;-/medium@ 53 58 63 egg-grades;-/medium 44 usda/01123;-/small@ 43 48 53 egg-grades;-/small 38 usda/01123;-/-@ 43 68 73 egg-grades;-/- 38 50 60 practice,usda/01123	usda/01123
F	egg white	whites of egg;egg albumen	egg	egg	eggs	raw-egg,vegetarian,animal	100	52 10.90 0.17 0.000 - 0.000 0.000 0.73 0.71 - 0.0 0.0 0 166 163 7 0.08 0.0 87.57 0.63	- 243 usda/01124	-/large 33 usda/01124;-/- 33 usda/01124	usda/01124
F	egg yolk	yolks of egg	egg	egg	eggs	raw-egg,vegetarian,animal	100	322 15.86 26.54 9.551 - 11.738 4.204 3.59 0.56 - 0.0 0.0 1085 48 109 129 2.73 5.4 52.31 1.71	- 243 usda/01125	-/large 17 usda/01125;-/- 17 usda/01125	usda/01125
F	pasteurised egg	pasteurized egg;liquid egg;pasteurised whole egg;liquid whole egg	egg	egg	eggs	vegetarian,animal	100	147 12.33 9.95 3.382 0.054 3.905 1.892 1.01 0.25 - 0.0 0.0 372 128 135 62 1.74 2.6 75.81 0.91			usda/01171
F	pasteurised egg white	pasteurized egg white;liquid egg white;carton egg white	egg	egg	eggs	vegetarian,animal	100	48 10.20 0.00 0.000 0.000 0.000 0.000 1.04 0.25 - 0.0 0.0 0 169 169 8 0.04 0.0 88.17 0.60			usda/01172
F	pasteurised egg yolk	pasteurized egg yolk;liquid egg yolk	egg	egg	eggs	vegetarian,animal	100	296 15.53 25.60 8.615 0.098 9.956 4.827 0.81 0.16 - 0.0 0.0 991 67 121 134 4.55 6.0 56.44 1.62			usda/01126
F	dried egg	egg powder;whole egg powder;dried whole egg	egg	egg	eggs	vegetarian,animal	100	592 48.05 43.90 15.069 0.265 16.726 8.314 1.13 0.56 - 0.0 0.0 1630 476 540 244 7.20 8.3 2.78 4.13	- 80 usda/01133;sifted 85 usda/01133		usda/01133
F	dried egg white	egg white powder;meringue powder;albumen powder	egg	egg	eggs	vegetarian,animal	100	382 81.10 0.00 0.000 - 0.000 0.000 7.80 5.40 - 0.0 0.0 0 1280 1125 62 0.15 0.0 5.80 5.30			usda/01173
F	duck egg		egg	egg	eggs	raw-egg,vegetarian,animal	88	185 12.81 13.77 3.681 - 6.525 1.223 1.45 0.93 - 0.0 0.0 884 146 222 64 3.85 1.7 70.83 1.14		-/- 70 usda/01138	usda/01138
F	goose egg		egg	egg	eggs	raw-egg,vegetarian,animal	87	185 13.87 13.27 3.595 - 5.747 1.672 1.35 0.94 - 0.0 0.0 852 138 210 60 3.64 1.7 70.43 1.08		-/- 144 usda/01139	usda/01139
F	quail egg	quail's egg	egg	egg	eggs	raw-egg,vegetarian,animal	92	158 13.05 11.09 3.557 - 4.324 1.324 0.41 0.40 - 0.0 0.0 844 141 132 64 3.65 1.4 74.35 1.10		-/- 9 usda/01140	usda/01140
F	turkey egg		egg	egg	eggs	raw-egg,vegetarian,animal	88	171 13.68 11.88 3.632 - 4.571 1.658 1.15 - - 0.0 - 933 151 142 99 4.10 - 72.50 0.79		-/- 79 usda/01141	usda/01141
F	hard-boiled egg	hard-cooked egg;boiled egg	egg	egg	eggs	vegetarian,animal	88	155 12.58 10.61 3.267 - 4.077 1.414 1.12 1.12 - 0.0 0.0 373 124 126 50 1.19 2.2 74.62 1.08	- 136 usda/01129;chopped 136 usda/01129	-/large 50 usda/01129;-/- 50 usda/01129	usda/01129
F	egg replacer	egg replacement powder;vegan egg replacer	egg	egg	?						
F	instant yeast	fast-action yeast;easy-bake yeast;easy-blend yeast;quick yeast;fast-acting yeast;instant dried yeast;fast-action dried yeast;instant dry yeast;rapid-rise yeast;easy-blend dried yeast;bread machine yeast;quick-rise yeast	leaven	leaven		vegan,vegetarian	100	325 40.44 7.61 1.001 - 4.309 0.017 41.22 0.00 - 26.9 0.0 0 51 955 30 2.17 0.0 5.08 5.65	- 144 152.4 192 usda/18375,mill,bba,practice	packet/- 7.2 usda/18375	usda/18375/stand-in
F	dried yeast	active dry yeast;dried active yeast;active dried yeast;dry yeast	leaven	leaven		vegan,vegetarian	100	325 40.44 7.61 1.001 - 4.309 0.017 41.22 0.00 - 26.9 0.0 0 51 955 30 2.17 0.0 5.08 5.65	- 136.32 192 192 usda/18375,bba	packet/- 7.2 usda/18375	usda/18375
F	fresh yeast	compressed yeast;baker's yeast;cake yeast;wet yeast;fresh baker's yeast	leaven	leaven		vegan,vegetarian	100	105 8.40 1.90 0.243 - 1.047 0.004 18.10 0.00 - 8.1 0.0 0 30 601 19 3.25 0.0 69.00 1.80		cake/- 17 usda/18374	usda/18374
F	osmotolerant yeast	gold yeast	leaven	leaven		vegan,vegetarian	100	325 40.44 7.61 1.001 - 4.309 0.017 41.22 0.00 - 26.9 0.0 0 51 955 30 2.17 0.0 5.08 5.65	- 192 usda/18375	packet/- 7.2 usda/18375	usda/18375/stand-in
F	baking powder	double-acting baking powder	leaven	leaven	?	vegan,vegetarian	100	53 0.00 0.00 0.000 - 0.000 0.000 27.70 0.00 - 0.2 0.0 0 10600 20 5876 11.02 0.0 5.00 67.30	- 192 220.8 220.8 usda/18369,mill		usda/18369
F	gluten-free baking powder		leaven	leaven		vegan,vegetarian	100	53 0.00 0.00 0.000 - 0.000 0.000 27.70 0.00 - 0.2 0.0 0 10600 20 5876 11.02 0.0 5.00 67.30	- 220.8 usda/18369		usda/18369/stand-in
F	low-sodium baking powder		leaven	leaven	?	vegan,vegetarian	100	97 0.10 0.40 0.073 - 0.006 0.121 46.90 0.00 - 2.2 0.0 0 90 10100 4332 8.17 0.0 6.20 46.40	- 240 usda/18371		usda/18371
F	bicarbonate of soda	baking soda;bicarb;bicarb of soda;sodium bicarbonate;bread soda;cooking soda	leaven	leaven		vegan,vegetarian	100	0 0.00 0.00 0.000 - 0.000 0.000 0.00 0.00 - 0.0 0.0 0 27360 0 0 0.00 0.0 0.20 36.90	- 220.8 220.8 288 usda/18372,mill		usda/18372
F	cream of tartar	potassium bitartrate;tartar	leaven	leaven		vegan,vegetarian	100	258 0.00 0.00 0.000 - 0.000 0.000 61.50 0.00 - 0.2 0.0 0 52 16500 8 3.72 0.0 1.70 36.80	- 144 usda/18373		usda/18373
F	baker's ammonia	ammonium bicarbonate;ammonium carbonate;salt of hartshorn;hartshorn	leaven	leaven		vegan,vegetarian					
F	potash	potassium carbonate;pearl ash	leaven	leaven		vegan,vegetarian					
F	sourdough starter	sourdough culture;levain;leaven;wheat sourdough starter;liquid levain	leaven	leaven	?wheat	raw-flour			- 220 245 270 practice		
F	nutritional yeast	nutritional yeast flakes;yeast flakes				vegan,vegetarian			- 64 80 96 practice		
F	brewer's yeast				?barley	vegan,vegetarian					
F	almonds	whole almonds;unblanched almonds;natural almonds;skin-on almonds;raw almonds	nut	nut,tree nut	almond	whole-nut,vegan,vegetarian	100	579 21.15 49.93 3.802 0.015 31.551 12.329 21.55 4.35 0.72 12.5 0.0 0 1 733 269 3.71 0.0 4.41 2.97	- 86 111 143 usda/12061,mill,practice;chopped 95 107.5 120 practice;ground 95 usda/12061;sliced 86 89 92 usda/12061,mill;slivered 108 111 114 usda/12061,mill;whole 142 142.5 143 usda/12061,mill	-/- 1.2 usda/12061	usda/12061
F	blanched almonds	whole blanched almonds;skinned almonds;peeled almonds;blanched whole almonds	nut	nut,tree nut	almond	whole-nut,vegan,vegetarian	100	590 21.40 52.52 3.953 0.019 33.415 12.368 18.67 4.63 1.00 9.9 0.0 0 19 659 236 3.28 0.0 4.51 2.91	- 145 145.3 145.6 usda/12062;whole 145 usda/12062		usda/12062
F	flaked almonds	sliced almonds;almond flakes;toasted flaked almonds	nut	nut,tree nut	almond	vegan,vegetarian	100	579 21.15 49.93 3.802 0.015 31.551 12.329 21.55 4.35 0.72 12.5 0.0 0 1 733 269 3.71 0.0 4.41 2.97	- 86 86 92 mill,practice		usda/12061/stand-in
F	slivered almonds	almond slivers;nibbed almonds;chopped almonds;blanched slivered almonds	nut	nut,tree nut	almond	vegan,vegetarian	100	590 21.40 52.52 3.953 0.019 33.415 12.368 18.67 4.63 1.00 9.9 0.0 0 19 659 236 3.28 0.0 4.51 2.91	- 108 114 114 mill,practice		usda/12062/stand-in
F	hazelnuts	filberts;cobnuts;whole hazelnuts;skin-on hazelnuts;raw hazelnuts	nut	nut,tree nut	hazelnut	whole-nut,vegan,vegetarian	100	628 14.95 60.75 4.464 - 45.652 7.920 16.70 4.34 0.48 9.7 0.0 0 0 680 114 4.70 0.0 5.31 2.29	- 115 125 135 usda/12120;chopped 115 usda/12120;ground 75 usda/12120;whole 135 usda/12120	-/- 1.4 usda/12120	usda/12120
F	blanched hazelnuts	skinned hazelnuts;peeled hazelnuts;roasted hazelnuts	nut	nut,tree nut	hazelnut	whole-nut,vegan,vegetarian	100	629 13.70 61.15 4.669 - 48.192 5.558 17.00 3.49 0.93 11.0 0.0 0 0 658 149 3.30 0.0 5.79 2.36	- 115 125 135 usda/12120;chopped 115 usda/12120;ground 75 usda/12120;whole 135 usda/12120	-/- 1.4 usda/12120	usda/12121
F	walnuts	walnut halves;english walnuts;walnut pieces;shelled walnuts	nut	nut,tree nut	walnut	whole-nut,vegan,vegetarian	100	654 15.23 65.21 6.126 - 8.933 47.174 13.71 2.61 0.06 6.7 0.0 0 2 441 98 2.91 0.0 4.07 1.78	- 100 115 120 usda/12155,mill;chopped 113 117 120 usda/12155,mill;ground 80 usda/12155;whole 100 usda/12155		usda/12155
F	black walnuts		nut	nut,tree nut	walnut	whole-nut,vegan,vegetarian	100	619 24.06 59.33 3.483 - 15.442 36.437 9.58 1.10 0.24 6.8 0.0 0 2 523 61 3.12 0.0 4.56 2.47	- 124.8 124.9 125 usda/12154;chopped 125 usda/12154		usda/12154
F	pecans	pecan nuts;pecan halves;pecan pieces;pecan nut halves	nut	nut,tree nut	pecan	whole-nut,vegan,vegetarian	100	691 9.17 71.97 6.180 - 40.801 21.614 13.86 3.97 0.46 9.6 0.0 0 0 410 70 2.53 0.0 3.52 1.49	- 99 109 114 usda/12142,mill;chopped 109 111.5 114 usda/12142,mill;halved 99 usda/12142		usda/12142
F	cashews	cashew nuts;raw cashews;unsalted cashews;raw cashew nuts;plain cashews	nut	nut,tree nut	cashew	whole-nut,vegan,vegetarian	100	553 18.22 43.85 7.783 - 23.797 7.845 30.19 5.91 23.49 3.3 - 0 12 660 37 6.68 0.0 5.20 2.54	- 137 137.3 137.6 usda/12085;whole 137 usda/12085		usda/12087
F	roasted cashews	dry-roasted cashews;roasted unsalted cashews;roasted cashew nuts	nut	nut,tree nut	cashew	whole-nut,vegan,vegetarian	100	574 15.31 46.35 9.157 - 27.317 7.836 32.69 5.01 - 3.0 0.0 0 16 565 45 6.00 0.0 1.70 3.95	- 137 137.3 137.6 usda/12085;whole 137 usda/12085		usda/12085
F	pistachios	pistachio nuts;shelled pistachios;pistachio kernels;unsalted pistachios;raw pistachios;shelled pistachio nuts;slivered pistachios	nut	nut,tree nut	pistachio	whole-nut,vegan,vegetarian	100	560 20.16 45.32 5.907 0.000 23.257 14.380 27.17 7.66 1.67 10.6 0.0 0 1 1025 105 3.92 0.0 4.37 2.99	- 123 usda/12151	-/- 0.7 usda/12151	usda/12151
F	macadamia nuts	macadamias;raw macadamia nuts	nut	nut,tree nut	macadamia	whole-nut,vegan,vegetarian	100	718 7.91 75.77 12.061 - 58.877 1.502 13.82 4.57 1.05 8.6 0.0 0 5 368 85 3.69 0.0 1.36 1.14	- 134 usda/12131;halved 134 usda/12131;whole 134 usda/12131		usda/12131
F	brazil nuts	brazils;shelled brazil nuts	nut	nut,tree nut	brazil-nut	whole-nut,vegan,vegetarian	100	659 14.32 67.10 16.134 - 23.879 24.399 11.74 2.33 0.25 7.5 0.0 0 3 659 160 2.43 0.0 3.42 3.43	- 133 usda/12078;whole 133 usda/12078	-/- 5 usda/12078	usda/12078
F	pine nuts	pine kernels;pignoli;pinoli;pinenuts	nut	nut,tree nut	pine-nut	vegan,vegetarian	100	673 13.69 68.37 4.899 - 18.764 34.071 13.08 3.59 1.43 3.7 0.0 0 2 597 16 5.53 0.0 2.28 2.59	- 135 usda/12147	-/- 0.17 usda/12147	usda/12147
F	chestnuts	sweet chestnuts;fresh chestnuts;whole chestnuts;raw chestnuts	nut	nut,tree nut	chestnut	whole-nut,vegan,vegetarian	74	213 2.42 2.26 0.425 - 0.780 0.894 45.54 - - 8.1 - 0 3 518 27 1.01 0.0 48.65 1.13	- 145 usda/12097	-/- 8 10 12 practice	usda/12097
F	cooked chestnuts	vacuum-packed chestnuts;peeled chestnuts;roasted chestnuts;tinned chestnuts;cooked peeled chestnuts;vacuum-packed cooked chestnuts	nut	nut,tree nut	chestnut	vegan,vegetarian	100	131 2.00 1.38 0.260 - 0.476 0.545 27.76 - - - - 0 27 715 46 1.73 0.0 68.15 0.71		-/- 7 8.5 10 practice	usda/12101
F	mixed nuts	chopped mixed nuts;unsalted mixed nuts	nut	nut,tree nut	?	whole-nut,vegan,vegetarian	100		- 118.29411825 au250;chopped 118.29411825 au250		
F	hickory nuts		nut	nut,tree nut	other-nut	whole-nut,vegan,vegetarian	100	657 12.72 64.37 7.038 - 32.611 21.886 18.25 - - 6.4 0.0 0 1 436 61 2.12 0.0 2.65 2.00	- 120 usda/12130	-/- 3 usda/12130	usda/12130
F	tiger nuts		nut			whole-nut,vegan,vegetarian	100				
F	peanuts	groundnuts;raw peanuts;unsalted peanuts;monkey nuts;skinless peanuts;redskin peanuts	nut	nut,groundnut	peanuts	whole-nut,vegan,vegetarian	100	567 25.80 49.24 6.279 0.000 24.426 15.558 16.13 4.72 - 8.5 0.0 0 18 705 92 4.58 0.0 6.50 2.33	- 146 usda/16087		usda/16087
F	roasted peanuts	dry-roasted peanuts;unsalted roasted peanuts;roasted unsalted peanuts	nut	nut,groundnut	peanuts	whole-nut,vegan,vegetarian	100	587 24.35 49.66 7.723 0.027 26.181 9.773 21.26 4.90 4.39 8.4 0.0 0 6 634 58 1.58 0.0 1.81 2.92	- 146 usda/16390	-/- 1 usda/16390	usda/16390
F	salted peanuts	roasted salted peanuts	nut	nut,groundnut	peanuts	whole-nut,vegan,vegetarian	100	599 28.03 52.50 8.655 - 25.995 15.303 15.26 4.18 3.07 9.4 0.0 0 320 726 61 1.52 0.0 1.45 2.75	- 144 usda/16089;chopped 144 usda/16089		usda/16089
F	peanut butter	smooth peanut butter;creamy peanut butter;smooth peanut butter with salt	fat	nut butter	peanuts	vegan,vegetarian	100	598 22.21 51.36 10.325 0.075 25.941 12.535 22.31 10.49 3.56 5.0 0.0 0 426 558 49 1.74 0.0 1.23 2.89	- 256 258 270 usda/16398,mill		usda/16098
F	crunchy peanut butter	chunky peanut butter	fat	nut butter	peanuts	vegan,vegetarian	100	589 24.06 49.94 7.607 - 23.123 13.932 21.57 8.41 4.93 8.0 0.0 0 486 745 45 1.90 0.0 1.14 3.29	- 256 257 258 usda/16097		usda/16097
F	almond butter	smooth almond butter	fat	nut butter	almond	vegan,vegetarian	100	614 20.96 55.50 4.152 - 32.445 13.613 18.82 4.43 0.08 10.3 0.0 0 7 748 347 3.49 0.0 1.64 3.09	- 250 256 272 usda/12195,mill		usda/12195
F	cashew butter	cashew nut butter	fat	nut butter	cashew	vegan,vegetarian	100	587 17.56 49.41 9.763 - 29.122 8.354 27.57 - - 2.0 0.0 0 15 546 43 5.03 0.0 2.96 2.50	- 256 usda/12088		usda/12088
F	hazelnut butter	hazelnut paste;hazelnut purée;hazelnut puree	fat	nut butter	hazelnut	vegan,vegetarian	41	628 14.95 60.75 4.464 - 45.652 7.920 16.70 4.34 0.48 9.7 0.0 0 0 680 114 4.70 0.0 5.31 2.29	- 240 256 272 practice		usda/12120/stand-in
F	chocolate hazelnut spread	hazelnut chocolate spread;chocolate spread		nut butter	?hazelnut		100	541 5.41 29.73 28.423 - 0.000 0.000 62.16 54.05 - 5.4 0.0 0 41 407 108 4.38 0.0 1.07 1.44			usda/19125
F	marzipan	golden marzipan;white marzipan		nut butter	?almond		100	458 9.00 27.74 2.629 - 18.012 5.821 47.81 36.25 - 4.8 0.0 0 9 314 172 1.60 0.0 14.08 1.37			usda/12071/stand-in
F	almond paste			nut butter	?almond		100	458 9.00 27.74 2.629 - 18.012 5.821 47.81 36.25 - 4.8 0.0 0 9 314 172 1.60 0.0 14.08 1.37	- 227 243 259 usda/12071,mill;packed 227 243 259 usda/12071,mill		usda/12071
F	praline paste			nut butter	?						
F	chestnut purée	unsweetened chestnut purée;sweetened chestnut purée;chestnut puree;unsweetened chestnut puree;sweetened chestnut puree		nut butter	chestnut	vegan,vegetarian	100	131 2.00 1.38 0.260 - 0.476 0.545 27.76 - - - - 0 27 715 46 1.73 0.0 68.15 0.71	- 245 260 275 practice		usda/12101/stand-in
F	coconut	fresh coconut;coconut flesh;coconut meat	nut	coconut	coconut	vegan,vegetarian	52	354 3.33 33.49 29.698 - 1.425 0.366 15.23 6.23 - 9.0 0.0 0 20 356 14 2.43 0.0 46.99 0.97	- 80 usda/12104;grated 80 usda/12104	-/medium 397 usda/12104;-/- 45 45 397 usda/12104	usda/12104
F	desiccated coconut	unsweetened desiccated coconut;unsweetened shredded coconut;dried coconut;shredded coconut;unsweetened coconut;fine desiccated coconut	nut	coconut	coconut	vegan,vegetarian	100	660 6.88 64.53 57.218 - 2.745 0.706 23.65 7.35 - 16.3 0.0 0 37 543 26 3.32 0.0 3.00 1.94	- 80 85.17176514 93 au250,practice		usda/12108
F	sweetened coconut	sweetened shredded coconut;sweetened flaked coconut;sweetened desiccated coconut	nut	coconut	coconut	vegan,vegetarian	100	501 2.88 35.49 31.468 - 1.510 0.388 47.67 43.17 - 4.5 0.0 0 262 337 15 1.92 0.0 12.55 1.42	- 85 89 93 usda-r27;grated 93 usda/12179		usda/12179
F	coconut flakes	flaked coconut;coconut chips;unsweetened coconut flakes;toasted coconut flakes	nut	coconut	coconut	vegan,vegetarian	100	660 6.88 64.53 57.218 - 2.745 0.706 23.65 7.35 - 16.3 0.0 0 37 543 26 3.32 0.0 3.00 1.94	- 50 67.5 85 practice		usda/12108/stand-in
F	coconut milk	tinned coconut milk;canned coconut milk;full-fat coconut milk	liquid	coconut	coconut	vegan,vegetarian	100	197 2.02 21.33 18.915 - 0.907 0.233 2.81 - - - - 0 13 220 18 3.30 0.0 72.88 0.97	- 226 226 240 usda/12118		usda/12118
F	light coconut milk	reduced-fat coconut milk	liquid	coconut	coconut	vegan,vegetarian		73 0.7 7 6.2 - - - 2	- 231.85647177 235.4052953175 238.954118865 practice		memory
F	coconut cream	tinned coconut cream;canned coconut cream	liquid	coconut	coconut	vegan,vegetarian	100	330 3.63 34.68 30.753 - 1.475 0.379 6.65 - - 2.2 0.0 0 4 325 11 2.28 0.0 53.90 1.15	- 240 usda/12115		usda/12115
F	creamed coconut	coconut block;block creamed coconut	fat	coconut	coconut	vegan,vegetarian	100	684 5.30 69.08 61.257 - 2.939 0.756 21.52 - - - - 0 37 551 26 3.36 0.0 1.67 2.44			usda/12177
F	coconut water		liquid	coconut	coconut	vegan,vegetarian	100	19 0.72 0.20 0.176 - 0.008 0.002 3.71 2.61 - 1.1 0.0 0 105 250 24 0.29 0.0 94.99 0.39	- 240 usda/12119		usda/12119
F	sesame seeds	white sesame seeds;hulled sesame seeds;black sesame seeds;raw sesame seeds;sesame	seed	seed	sesame	vegan,vegetarian	100	573 17.73 49.67 6.957 - 18.759 21.773 23.45 0.30 - 11.8 0.0 0 11 468 975 14.55 0.0 4.69 4.45	- 144 usda/12023		usda/12023
F	tahini	tahini paste;light tahini;sesame paste;dark tahini;tahina;hulled tahini	fat	seed butter	sesame	vegan,vegetarian	100	592 17.40 53.01 7.423 - 20.016 23.232 21.50 - - 4.7 0.0 0 35 459 141 4.42 0.0 3.00 5.09	- 240 usda/12698		usda/12698
F	poppy seeds	blue poppy seeds;black poppy seeds;poppyseeds	seed	seed		vegan,vegetarian	100	525 17.99 41.56 4.517 0.000 5.982 28.569 28.13 2.99 - 19.5 0.0 0 26 719 1438 9.76 0.0 5.95 6.37	- 134.4 137.6 140.8 usda/02033		usda/02033
F	sunflower seeds	hulled sunflower seeds;shelled sunflower seeds;raw sunflower seeds;sunflower kernels;unsalted sunflower seeds;sunflower seed kernels	seed	seed		vegan,vegetarian	100	584 20.78 51.46 4.455 - 18.528 23.137 20.00 2.62 - 8.6 0.0 0 9 645 78 5.25 0.0 4.73 3.02	- 140 usda/12036		usda/12036
F	pumpkin seeds	pepitas;hulled pumpkin seeds;green pumpkin seeds;raw pumpkin seeds;shelled pumpkin seeds;pumpkin seed kernels;pumpkin kernels;unsalted pumpkin seeds	seed	seed		vegan,vegetarian	100	559 30.23 49.05 8.659 0.064 16.242 20.976 10.71 1.40 1.47 6.0 0.0 0 7 809 46 8.82 0.0 5.23 4.78	- 129 usda/12014		usda/12014
F	linseeds	flaxseed;flax seeds;golden linseeds;brown linseeds;whole linseeds;whole flaxseed;golden flaxseed;flax	seed	seed		vegan,vegetarian	100	534 18.29 42.16 3.663 - 7.527 28.730 28.88 1.55 - 27.3 0.0 0 30 813 255 5.73 0.0 6.96 3.72	- 163.2 164.8 168 usda/12220;ground 112 116 120 usda/12220;whole 163.2 164.8 168 usda/12220		usda/12220
F	ground linseeds	flaxseed meal;ground flaxseed;milled linseed;ground flax;milled flaxseed;flax meal	seed	seed		vegan,vegetarian	100	534 18.29 42.16 3.663 - 7.527 28.730 28.88 1.55 - 27.3 0.0 0 30 813 255 5.73 0.0 6.96 3.72	- 104 112 112 practice		usda/12220/stand-in
F	chia seeds	black chia seeds;white chia seeds;chia	seed	seed		vegan,vegetarian	100	486 16.54 30.74 3.330 0.140 2.309 23.665 42.12 - - 34.4 - 0 16 407 631 7.72 - 5.80 4.80	- 160 175 192 practice		usda/12006
F	hemp seeds	hulled hemp seeds;hemp hearts;shelled hemp seeds	seed	seed		vegan,vegetarian	100	553 31.56 48.75 4.600 0.000 5.400 38.100 8.67 1.50 - 4.0 - 0 5 1200 70 7.95 - 4.96 6.06	- 160 usda/12012		usda/12012
F	melon seeds	watermelon seeds	seed	seed		vegan,vegetarian	100	557 28.33 47.37 9.779 - 7.407 28.094 15.31 - - - - 0 99 648 54 7.28 0.0 5.05 3.94	- 108 usda/12174		usda/12174
F	lotus seeds		seed	seed		vegan,vegetarian	100	332 15.41 1.97 0.330 - 0.388 1.166 64.47 - - - - 0 5 1368 163 3.53 0.0 14.16 3.99	- 32 usda/12013		usda/12013
F	psyllium husk	psyllium;ground psyllium husk;psyllium husk powder		seed		vegan,vegetarian	100		- 72 84 96 practice		
F	sunflower seed butter		fat	seed butter		vegan,vegetarian	100	617 17.28 55.20 4.678 0.027 39.025 9.805 23.32 10.54 0.83 5.7 - 0 3 576 64 4.12 0.0 0.62 3.58	- 256 usda/12040		usda/12040
F	mixed seeds	seed mix	seed	seed	?	vegan,vegetarian	100				
F	red lentils	split red lentils;dried red lentils;masoor dal;red split lentils;pink lentils	pulse	pulse,lentil		vegan,vegetarian,dried-pulse	100	358 23.91 2.17 0.379 0.000 0.500 1.137 63.10 - 47.62 10.8 - 0 7 668 48 7.39 0.0 7.82 3.00	- 192 usda/16144		usda/16144
F	green lentils	brown lentils;dried green lentils;lentils;dried lentils;dried brown lentils	pulse	pulse,lentil		vegan,vegetarian,dried-pulse	100	352 24.63 1.06 0.154 0.000 0.193 0.526 63.35 2.03 49.90 10.7 0.0 0 6 677 35 6.51 0.0 8.26 2.71	- 192 usda/16069		usda/16069
F	puy lentils	french green lentils;small green lentils;le puy lentils;beluga lentils;black lentils	pulse	pulse,lentil		vegan,vegetarian,dried-pulse	100	352 24.63 1.06 0.154 0.000 0.193 0.526 63.35 2.03 49.90 10.7 0.0 0 6 677 35 6.51 0.0 8.26 2.71	- 192 usda/16069		usda/16069/stand-in
F	tinned lentils	canned lentils;cooked lentils;tinned green lentils;canned green lentils;drained tinned lentils	pulse	pulse,lentil		vegan,vegetarian	100	116 9.02 0.38 0.053 0.000 0.064 0.175 20.13 1.80 - 7.9 0.0 0 2 369 19 3.33 0.0 69.64 0.83	- 180 190 200 practice		usda/16070
F	dried chickpeas	dried garbanzo beans;dry chickpeas;dry garbanzo beans;chana	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	378 20.47 6.04 0.603 0.000 1.377 2.731 62.95 10.70 - 12.2 0.0 0 24 718 57 4.31 0.0 7.68 2.85	- 200 usda/16056		usda/16056
F	dried kidney beans	dried red kidney beans;dry kidney beans;dry red kidney beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	337 22.53 1.06 0.154 0.000 0.082 0.586 61.29 2.10 - 15.2 0.0 0 12 1359 83 6.69 0.0 11.75 3.37	- 184 189.6 195.2 usda/16032		usda/16032
F	dried black beans	dry black beans;black turtle beans;dried black turtle beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	341 21.60 1.42 0.366 0.000 0.123 0.610 62.36 2.12 - 15.5 0.0 0 5 1483 123 5.02 0.0 11.02 3.60	- 193.6 193.8 194 usda/16014		usda/16014
F	dried cannellini beans	dry cannellini beans;dried white beans;dried white kidney beans;dry white beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	333 23.36 0.85 0.219 0.000 0.074 0.364 60.27 2.11 - 15.2 0.0 0 16 1795 240 10.44 0.0 11.32 4.20	- 201.6 201.8 202 usda/16049		usda/16049
F	dried haricot beans	dried navy beans;dry navy beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	337 22.33 1.50 0.170 0.000 0.128 0.873 60.75 3.88 32.90 15.3 0.0 - 5 1185 147 5.49 0.0 12.10 3.32	- 208 usda/16037		usda/16037
F	dried great northern beans	dry great northern beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	339 21.86 1.14 0.356 0.000 0.053 0.477 62.37 2.26 - 20.2 0.0 0 14 1387 175 5.47 0.0 10.70 3.93	- 183 usda/16024		usda/16024
F	dried borlotti beans	dried cranberry beans;dry cranberry beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	335 23.03 1.23 0.316 0.000 0.106 0.527 60.05 - - 24.7 - 0 6 1332 127 5.00 0.0 12.39 3.31	- 195 usda/16019		usda/16019
F	dried pinto beans	dry pinto beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	347 21.42 1.23 0.235 0.000 0.229 0.407 62.55 2.11 34.17 15.5 0.0 0 12 1393 113 5.07 0.0 11.33 3.46	- 192 192.5 193 usda/16042		usda/16042
F	dried flageolet beans	dry flageolet beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	343 18.81 2.02 0.221 0.000 0.138 1.207 64.11 - - 25.2 - 0 18 1316 186 3.40 0.0 10.77 4.30	- 184 usda/16022		usda/16022
F	dried butter beans	dried lima beans;dry lima beans;dried butterbeans;dry large lima beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse,kidney-bean	100	338 21.46 0.69 0.161 0.000 0.062 0.309 63.38 8.50 - 19.0 0.0 0 18 1724 81 7.51 0.0 10.17 4.30	- 177.6 177.8 178 usda/16071		usda/16071
F	dried black-eyed beans	dried black-eyed peas;dried cowpeas	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	336 23.52 1.26 0.331 0.000 0.106 0.542 60.03 6.90 - 10.6 0.0 0 16 1112 110 8.27 0.0 11.95 3.24	- 167 167.5 168 usda/16062		usda/16062
F	dried adzuki beans	dried aduki beans;dried azuki beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	329 19.87 0.53 0.191 0.000 0.050 0.113 62.90 - - 12.7 - 0 5 1254 66 4.98 0.0 13.44 3.26	- 197 usda/16001		usda/16001
F	dried mung beans	mung beans;moong beans;whole mung beans	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	347 23.86 1.15 0.348 0.000 0.161 0.384 62.62 6.60 - 16.3 0.0 0 15 1246 132 6.74 0.0 9.05 3.32	- 207 207.5 208 usda/16080		usda/16080
F	split mung beans	moong dal;mung dal;yellow moong dal	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	347 23.86 1.15 0.348 0.000 0.161 0.384 62.62 6.60 - 16.3 0.0 0 15 1246 132 6.74 0.0 9.05 3.32	- 207 207.5 208 usda/16080		usda/16080/stand-in
F	dried broad beans	dried fava beans;dry fava beans;ful	pulse	pulse,bean		vegan,vegetarian,dried-pulse,fava	100	341 26.12 1.53 0.254 0.000 0.303 0.627 58.29 5.70 - 25.0 0.0 0 13 1062 103 6.70 0.0 10.98 3.08	- 150 150.2 150.4 usda/16052		usda/16052
F	dried soya beans	dried soybeans;soybeans;soya beans;dry soybeans	pulse	pulse,bean	soybeans	vegan,vegetarian,dried-pulse	100	446 36.49 19.94 2.884 0.000 4.404 11.255 30.16 7.33 - 9.3 0.0 0 2 1797 277 15.70 0.0 8.54 4.87	- 186 usda/16108		usda/16108
F	urad dal	black gram;urad beans;split urad dal;white urad dal	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	341 25.21 1.64 0.114 0.000 0.085 1.071 58.99 - - 18.3 - 0 38 983 138 7.57 0.0 10.80 3.36	- 207 usda/16083		usda/16083
F	chana dal	split chickpeas;bengal gram dal	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	378 20.47 6.04 0.603 0.000 1.377 2.731 62.95 10.70 - 12.2 0.0 0 24 718 57 4.31 0.0 7.68 2.85	- 200 usda/16056		usda/16056/stand-in
F	toor dal	pigeon peas;arhar dal;tur dal;toovar dal;gungo peas	pulse	pulse,bean		vegan,vegetarian,dried-pulse	100	343 21.70 1.49 0.330 0.000 0.012 0.814 62.78 - - 15.0 - 0 17 1392 130 5.23 0.0 10.59 3.45	- 205 usda/16101		usda/16101
F	yellow split peas	split peas;dried split peas;green split peas;split green peas;split yellow peas	pulse	pulse		vegan,vegetarian,dried-pulse	100	352 23.82 1.16 0.161 0.000 0.242 0.495 63.74 8.00 - 25.5 0.0 0 15 823 37 4.82 0.0 8.62 2.66	- 197 usda/16085		usda/16085
F	dried peas	marrowfat peas;dried marrowfat peas;whole dried peas;carlin peas;blue peas	pulse	pulse		vegan,vegetarian,dried-pulse	100	352 23.82 1.16 0.161 0.000 0.242 0.495 63.74 8.00 - 25.5 0.0 0 15 823 37 4.82 0.0 8.62 2.66	- 197 usda/16085		usda/16085/stand-in
F	dried lupin beans	lupin seeds;lupini beans	pulse	pulse,bean	lupin	vegan,vegetarian,dried-pulse	100	371 36.17 9.74 1.156 0.000 3.940 2.439 40.37 - - 18.9 0.0 0 15 1013 176 4.36 0.0 10.44 3.28	- 180 usda/16076		usda/16076
F	soup mix	dried soup mix;broth mix	pulse	pulse,bean	?	vegan,vegetarian,dried-pulse					
F	tinned chickpeas	canned chickpeas;cooked chickpeas;canned garbanzo beans;drained chickpeas;tinned drained chickpeas	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	139 7.05 2.77 0.214 0.000 0.488 0.967 22.53 4.01 - 6.4 0.0 0 246 126 45 1.07 0.0 66.72 0.91	- 150 165 180 practice		usda/16358
F	tinned kidney beans	canned kidney beans;tinned red kidney beans;cooked kidney beans;canned red kidney beans;drained kidney beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	124 7.98 1.05 0.181 0.000 0.029 0.193 21.49 3.80 - 5.5 0.0 0 231 277 57 1.50 0.0 68.11 1.36	- 160 172.5 185 practice		usda/16145
F	tinned black beans	canned black beans;cooked black beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	91 6.03 0.29 0.075 0.000 0.025 0.125 16.55 0.23 - 6.9 0.0 0 384 308 35 1.90 0.0 75.64 1.49	- 240 usda/16018		usda/16018
F	tinned cannellini beans	canned cannellini beans;tinned white beans;canned white beans;cooked white beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	114 7.26 0.29 0.074 0.000 0.025 0.123 21.20 0.29 - 4.8 - 0 340 454 73 2.99 0.0 70.10 1.15	- 262 usda/16051		usda/16051
F	tinned haricot beans	canned navy beans;tinned navy beans;canned haricot beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	113 7.53 0.43 0.112 0.000 0.038 0.186 20.45 0.28 - 5.1 0.0 0 336 288 47 1.85 0.0 70.45 1.14	- 262 usda/16039		usda/16039
F	tinned borlotti beans	canned borlotti beans;canned cranberry beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	83 5.54 0.28 0.072 0.000 0.024 0.120 15.12 - - 6.3 - 0 332 260 34 1.55 0.0 77.56 1.50	- 260 usda/16021		usda/16021
F	tinned pinto beans	canned pinto beans;cooked pinto beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	114 6.99 0.90 0.158 0.000 0.153 0.273 20.22 0.54 10.21 5.5 0.0 0 239 274 63 1.33 0.0 70.60 1.30	- 160 172.5 185 practice		usda/16146
F	tinned butter beans	canned butter beans;canned lima beans;tinned butterbeans;tinned large white beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	79 4.93 0.17 0.039 0.000 0.015 0.074 14.91 - - 4.8 - 0 336 220 21 1.81 0.0 77.08 2.92	- 241 usda/16073		usda/16073
F	tinned black-eyed beans	canned black-eyed peas;canned black-eyed beans;tinned black-eyed peas	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	77 4.74 0.55 0.144 0.000 0.046 0.237 13.63 - - 3.3 - 0 293 172 20 0.97 0.0 79.63 1.45	- 240 usda/16064		usda/16064
F	tinned adzuki beans	canned adzuki beans;cooked adzuki beans	pulse	pulse,bean,tinned pulse		vegan,vegetarian	100	128 7.52 0.10 0.036 0.000 0.009 0.021 24.77 - - 7.3 - 0 8 532 28 2.00 0.0 66.29 1.33	- 230 usda/16002		usda/16002/stand-in
F	baked beans	tinned baked beans;canned baked beans;baked beans in tomato sauce	pulse	pulse,bean,tinned pulse	?	vegan,vegetarian	100	94 4.75 0.37 0.071 0.000 0.095 0.121 21.14 7.96 7.38 4.1 0.0 0 343 224 34 1.19 0.0 72.00 1.75	- 254 usda/16006		usda/16006
F	refried beans	canned refried beans	pulse	pulse,bean,tinned pulse	?		100	89 4.98 2.01 0.631 0.016 0.601 0.543 13.55 0.54 7.43 3.7 0.0 0 138 319 29 1.44 0.0 77.75 1.71	- 238 247 256 usda/16403		usda/16403
F	mushy peas	tinned mushy peas	pulse	pulse,bean,tinned pulse		vegan,vegetarian					
F	aquafaba	chickpea water;chickpea liquid	liquid	pulse,bean,tinned pulse		vegan,vegetarian	100	47 1.80 3.20 1.174 0.000 1.536 0.340 2.80 0.00 - 0.1 0.0 4 2 408 13 1.96 0.0 91.50 0.70	- 240 usda/43125		usda/43125/stand-in
F	hummus	houmous;plain hummus	pulse	pulse,bean,tinned pulse	?sesame	vegan,vegetarian	100	166 7.90 9.60 1.437 - 4.039 3.613 14.29 - - 6.0 - 0 379 228 38 2.44 0.0 66.59 1.66	- 240 243 246 usda/16158		usda/16158
F	tofu	firm tofu;plain tofu;block firm tofu;extra-firm tofu;bean curd;pressed tofu	pulse	soya food	soybeans	vegan,vegetarian	100	76 8.08 4.78 0.691 0.000 1.056 2.699 1.87 0.62 - 0.3 0.0 0 7 121 350 5.36 0.0 84.55 0.72	- 248 usda/16427	-/- 464 usda/16427	usda/16427
F	silken tofu	soft tofu;silken soft tofu;japanese silken tofu	pulse	soya food	soybeans	vegan,vegetarian	100	47 4.80 2.50 0.300 0.000 0.600 1.300 1.40 0.20 - 0.3 - 0 2 - 75 0.90 - 90.50 0.80			usda/16214/stand-in
F	smoked tofu		pulse	soya food	soybeans	vegan,vegetarian	100	78 9.04 4.17 0.793 0.000 1.127 1.649 2.85 0.60 - 0.9 0.0 0 12 148 201 1.61 0.0 82.93 1.01			usda/16126/stand-in
F	fried tofu	tofu puffs;deep-fried tofu	pulse	soya food	soybeans	vegan,vegetarian	100	270 18.82 20.18 2.918 0.000 4.456 11.390 8.86 2.72 - 3.9 0.0 0 16 146 372 4.87 0.0 50.52 1.62		-/- 13 usda/16129	usda/16129
F	tempeh		pulse	soya food	soybeans	vegan,vegetarian	100	192 20.29 10.80 2.539 0.000 3.205 4.300 7.64 - - - - 0 9 412 111 2.70 0.0 59.65 1.62	- 166 usda/16114		usda/16114
F	miso	miso paste;white miso;red miso;brown miso;white miso paste;shiro miso;red miso paste	pulse	soya food	?soybeans	vegan,vegetarian	100	198 12.79 6.01 1.025 0.000 1.118 2.884 25.37 6.20 - 5.4 0.0 0 3728 210 57 2.49 0.0 43.02 12.81	- 272 273.5 275 usda/16112		usda/16112
F	natto		pulse	soya food	soybeans	vegan,vegetarian	100	211 19.40 11.00 1.591 0.000 2.430 6.210 12.68 4.89 - 5.4 0.0 0 7 729 217 8.60 0.0 55.02 1.90	- 175 usda/16113		usda/16113
F	okara		pulse	soya food	soybeans	vegan,vegetarian	100	76 3.52 1.73 0.193 0.000 0.295 0.755 12.23 - - - - 0 9 213 80 1.30 0.0 81.64 0.88	- 122 usda/16130		usda/16130
F	edamame	edamame beans;shelled edamame;frozen edamame;podded edamame;green soya beans;green soybeans	pulse	soya food	soybeans	vegan,vegetarian	100	147 12.95 6.80 0.786 0.000 1.284 3.200 11.05 - - 4.2 - 0 15 620 197 3.55 0.0 67.50 1.70	- 256 usda/11450		usda/11450
F	textured soya protein	textured vegetable protein;soya mince;soya chunks	pulse	soya food	soybeans	vegan,vegetarian	100	327 51.46 1.22 0.136 0.000 0.208 0.533 33.92 16.42 - 17.5 0.0 0 20 2384 241 9.24 0.0 7.25 6.15	- 105 105.3 105.6 usda/16117		usda/16117/stand-in
F	soya lecithin	lecithin;soy lecithin	fat	soya food	soybeans	vegan,vegetarian	100	763 0.00 100.00 15.005 - 10.977 45.318 0.00 0.00 - 0.0 0.0 0 0 0 0 0.00 0.0 0.00 0.00	- 216 217.6 218 usda/04531		usda/04531
F	seitan		pulse	soya food	?wheat,soybeans	vegan,vegetarian					
F	vital wheat gluten	wheat gluten;gluten;gluten flour;gluten powder			wheat	vegan,vegetarian	100	370 75.16 1.85 0.272 - 0.156 0.810 13.79 0.00 - 0.6 0.0 0 29 100 142 5.20 0.0 8.20 1.00	- 120 132.5 145 practice		usda/48052
F	soy protein powder	soya protein isolate;soy protein isolate		soya food	soybeans	vegan,vegetarian	100	335 88.32 3.39 0.422 0.000 0.645 1.648 0.00 0.00 - 0.0 0.0 0 1005 81 178 14.50 0.0 4.98 3.58			usda/16122
F	onion	brown onion;yellow onion;white onion;cooking onion;spanish onion;raw onion	vegetable	vegetable,allium		vegan,vegetarian	90	40 1.10 0.10 0.042 0.000 0.013 0.017 9.34 4.24 0.00 1.7 0.0 0 4 146 23 0.21 0.0 89.11 0.35	- 115 160 160 usda/11282;chopped 160 usda/11282;sliced 115 usda/11282	slice/large 38 usda/11282;slice/medium 14 usda/11282;slice/- 9 9 38 usda/11282;-/large 150 usda/11282;-/medium 110 usda/11282;-/small 70 usda/11282;-/- 70 110 150 usda/11282	usda/11282
F	red onion		vegetable	vegetable,allium		vegan,vegetarian	90	40 1.10 0.10 0.042 0.000 0.013 0.017 9.34 4.24 0.00 1.7 0.0 0 4 146 23 0.21 0.0 89.11 0.35	- 115 160 160 usda/11282;chopped 160 usda/11282;sliced 115 usda/11282	slice/large 38 usda/11282;slice/medium 14 usda/11282;slice/- 9 9 38 usda/11282;-/large 150 usda/11282;-/medium 110 usda/11282;-/small 70 usda/11282;-/- 70 110 150 usda/11282	usda/11282/stand-in
F	sweet onion	vidalia onion	vegetable	vegetable,allium		vegan,vegetarian	84	32 0.80 0.08 - 0.000 - - 7.55 5.02 0.00 0.9 0.0 0 8 119 20 0.26 0.0 91.24 0.34	- 115 160 160 usda/11282;chopped 160 usda/11282;sliced 115 usda/11282	slice/large 38 usda/11282;slice/medium 14 usda/11282;slice/- 9 9 38 usda/11282;-/large 150 usda/11282;-/medium 110 usda/11282;-/small 70 usda/11282;-/- 70 110 150 usda/11282	usda/11294
F	pearl onion	pickling onion;button onion;silverskin onion;baby onion	vegetable	vegetable,allium		vegan,vegetarian	90	40 1.10 0.10 0.042 0.000 0.013 0.017 9.34 4.24 0.00 1.7 0.0 0 4 146 23 0.21 0.0 89.11 0.35		-/- 10 15 20 practice	usda/11282/stand-in
F	spring onion	scallion;green onion;salad onion;spring onions with tops	vegetable	vegetable,allium		vegan,vegetarian	96	32 1.83 0.19 0.032 0.000 0.027 0.074 7.34 2.33 - 2.6 0.0 0 16 276 72 1.48 0.0 89.83 0.81	- 96 98 100 usda/11291;chopped 96 98 100 usda/11291	-/large 25 usda/11291;-/medium 15 usda/11291;-/small 5 usda/11291;-/- 5 15 25 usda/11291	usda/11291
F	shallot	banana shallot;echalion shallot;échalote	vegetable	vegetable,allium		vegan,vegetarian	88	72 2.50 0.10 0.017 0.000 0.014 0.039 16.80 7.87 - 3.2 0.0 0 12 334 37 1.20 0.0 79.80 0.80	- 160 usda/11677;chopped 160 usda/11677	-/large 50 practice;-/medium 25 practice;-/small 15 practice;-/- 15 30 50 practice	usda/11677
F	leek	baby leek;trimmed leek	vegetable	vegetable,allium		vegan,vegetarian	44	61 1.50 0.30 0.040 0.000 0.004 0.166 14.15 3.90 - 1.8 0.0 0 20 180 59 2.10 0.0 83.00 1.05	- 89 usda/11246	slice/- 6 usda/11246;-/-@ 130 190 250 practice;-/- 89 usda/11246	usda/11246
F	garlic	garlic bulb;head of garlic;bulb of garlic;fresh garlic;wet garlic;clove of garlic;garlic clove=clove;clove garlic=clove	vegetable	vegetable,allium		vegan,vegetarian,garlic	87	149 6.36 0.50 0.089 0.000 0.011 0.249 33.06 1.00 - 2.1 0.0 0 17 401 181 1.70 0.0 58.58 1.50	- 134.4 135.2 136 usda/11215	bulb/- 40 55 70 practice;clove/large 5 6 7 practice;clove/small 2 2.5 3 practice;clove/- 2 3 7 usda/11215,practice;head/- 40 55 70 practice;-/- 40 55 70 practice	usda/11215
F	garlic paste	garlic purée;garlic puree	vegetable	vegetable,allium	?	vegan,vegetarian,garlic			- 224 248 272 practice		
F	black garlic		vegetable	vegetable,allium		vegan,vegetarian,garlic					
F	wild garlic	ramsons;wild garlic leaves;ramps	vegetable	leafy green		vegan,vegetarian,garlic	100	30 3.27 0.73 0.146 0.000 0.095 0.267 4.35 1.85 - 2.5 0.0 0 3 296 92 1.60 0.0 90.65 1.00			usda/11156/stand-in
F	chives	fresh chives	vegetable	vegetable,allium,fresh herb		vegan,vegetarian,fresh-herb	100	30 3.27 0.73 0.146 0.000 0.095 0.267 4.35 1.85 - 2.5 0.0 0 3 296 92 1.60 0.0 90.65 1.00	- 48 usda/11156;chopped 48 usda/11156		usda/11156
F	garlic chives	chinese chives	vegetable	vegetable,allium,fresh herb		vegan,vegetarian,fresh-herb	100	30 3.27 0.73 0.146 0.000 0.095 0.267 4.35 1.85 - 2.5 0.0 0 3 296 92 1.60 0.0 90.65 1.00	- 48 usda/11156;chopped 48 usda/11156		usda/11156/stand-in
F	carrot	raw carrot	vegetable	vegetable,root vegetable		vegan,vegetarian	89	41 0.93 0.24 0.037 0.000 0.014 0.117 9.58 4.74 1.43 2.8 0.0 0 69 320 33 0.30 0.0 88.29 0.97	- 110 122 128 usda/11124;chopped 128 usda/11124;grated 110 usda/11124;sliced 122 usda/11124	slice/- 3 usda/11124;strip/large 7 usda/11124;strip/medium 4 usda/11124;strip/- 4 4 7 usda/11124;-/large 72 usda/11124;-/medium 61 usda/11124;-/small 50 usda/11124;-/- 50 61 72 usda/11124	usda/11124
F	baby carrot	chantenay carrot	vegetable	vegetable,root vegetable		vegan,vegetarian	100	35 0.64 0.13 0.023 0.000 0.007 0.065 8.24 4.76 0.00 2.9 - 0 78 237 32 0.89 0.0 90.35 0.63		-/large 15 usda/11960;-/medium 10 usda/11960;-/- 10 10 15 usda/11960	usda/11960
F	parsnip		vegetable	vegetable,root vegetable		vegan,vegetarian	85	75 1.20 0.30 0.050 0.000 0.112 0.047 17.99 4.80 - 4.9 - 0 10 375 36 0.59 0.0 79.53 0.98	- 133 usda/11298;sliced 133 usda/11298	-/medium 110 130 150 practice;-/- 110 130 150 practice	usda/11298
F	turnip	white turnip	vegetable	vegetable,root vegetable		vegan,vegetarian	81	28 0.90 0.10 0.011 0.000 0.006 0.053 6.43 3.80 - 1.8 0.0 0 67 191 30 0.30 0.0 91.87 0.70	- 130 usda/11564;diced 130 usda/11564	slice/- 15 usda/11564;-/large 183 usda/11564;-/medium 122 usda/11564;-/small 61 usda/11564;-/- 61 122 183 usda/11564	usda/11564
F	swede	rutabaga;yellow turnip;neeps	vegetable	vegetable,root vegetable		vegan,vegetarian	85	37 1.08 0.16 0.027 0.000 0.025 0.088 8.62 4.46 0.40 2.3 0.0 0 12 305 43 0.44 0.0 89.43 0.71	- 140 usda/11435;diced 140 usda/11435	-/large 772 usda/11435;-/medium 386 usda/11435;-/small 192 usda/11435;-/- 192 386 772 usda/11435	usda/11435
F	beetroot	beet;raw beetroot;red beetroot;red beet;raw beet	vegetable	vegetable,root vegetable		vegan,vegetarian	67	43 1.61 0.17 0.027 0.000 0.032 0.060 9.56 6.76 - 2.8 0.0 0 78 325 16 0.80 0.0 87.58 1.08	- 136 usda/11080	-/- 82 usda/11080	usda/11080
F	cooked beetroot	vacuum-packed beetroot;cooked beets;ready-cooked beetroot	vegetable	vegetable,root vegetable		vegan,vegetarian	100	44 1.68 0.18 0.028 0.000 0.035 0.064 9.96 7.96 - 2.0 0.0 0 77 305 16 0.79 0.0 87.06 1.12	- 170 usda/11081;sliced 170 usda/11081	-/- 50 usda/11081	usda/11081
F	pickled beetroot	pickled beets	vegetable	pickle		vegan,vegetarian	100	65 0.80 0.08 0.013 0.000 0.016 0.029 16.28 11.05 - 0.8 0.0 0 149 115 11 0.41 0.0 81.88 0.96	- 227 usda/11609;sliced 227 usda/11609		usda/11609
F	golden beetroot	golden beet;yellow beetroot	vegetable	vegetable,root vegetable		vegan,vegetarian	67	43 1.61 0.17 0.027 0.000 0.032 0.060 9.56 6.76 - 2.8 0.0 0 78 325 16 0.80 0.0 87.58 1.08	- 136 usda/11080	-/- 82 usda/11080	usda/11080/stand-in
F	celeriac	celery root;root celery	vegetable	vegetable,root vegetable	celery	vegan,vegetarian	86	42 1.50 0.30 0.079 0.000 0.058 0.148 9.20 1.60 - 1.8 0.0 0 100 300 43 0.70 0.0 88.00 1.00	- 156 usda/11141	-/- 500 700 900 practice	usda/11141
F	radish	red radish;breakfast radish;pink radish	vegetable	vegetable,root vegetable		vegan,vegetarian	90	16 0.68 0.10 0.032 0.000 0.017 0.048 3.40 1.86 0.00 1.6 0.0 0 39 233 25 0.34 0.0 95.27 0.55	- 116 usda/11429;sliced 116 usda/11429	slice/- 1 usda/11429;-/large 9 usda/11429;-/medium 4.5 usda/11429;-/small 2 usda/11429;-/- 2 4.5 9 usda/11429	usda/11429
F	daikon	mooli;white radish;daikon radish;japanese radish	vegetable	vegetable,root vegetable		vegan,vegetarian	79	18 0.60 0.10 0.030 0.000 0.017 0.045 4.10 2.50 - 1.6 0.0 0 21 227 27 0.40 0.0 94.62 0.58	- 116 usda/11430;sliced 116 usda/11430	-/- 338 usda/11430	usda/11430
F	salsify	black salsify;scorzonera;oyster plant	vegetable	vegetable,root vegetable		vegan,vegetarian	87	82 3.30 0.20 - 0.000 - - 18.60 - - 3.3 - 0 20 380 60 0.70 0.0 77.00 0.90	- 133 usda/11437;sliced 133 usda/11437		usda/11437
F	Jerusalem artichoke	sunchoke	vegetable	vegetable,root vegetable		vegan,vegetarian	69	73 2.00 0.01 0.000 0.000 0.004 0.001 17.44 9.60 - 1.6 0.0 0 4 429 14 3.40 0.0 78.01 2.54	- 150 usda/11226;sliced 150 usda/11226		usda/11226
F	horseradish	fresh horseradish;horseradish root;fresh horseradish root;grated horseradish;freshly grated horseradish	vegetable	vegetable,root vegetable		vegan,vegetarian		62 4.5 0.3 - - - - 17 - - 6.2 - - - - - - - 75	- 192 216 240 practice;grated 192 216 240 practice		memory
F	sweet potato	orange sweet potato;orange-fleshed sweet potato	vegetable	vegetable,root vegetable		vegan,vegetarian	72	86 1.57 0.05 0.018 0.000 0.001 0.014 20.12 4.18 12.65 3.0 0.0 0 55 337 30 0.61 0.0 77.28 0.99	- 133 usda/11507;diced 133 usda/11507		usda/11507
F	yam		vegetable	vegetable,root vegetable		vegan,vegetarian	86	118 1.53 0.17 0.037 0.000 0.006 0.076 27.88 0.50 - 4.1 0.0 0 9 816 17 0.54 0.0 69.60 0.82	- 150 usda/11601;diced 150 usda/11601		usda/11601
F	cassava	yuca;manioc	vegetable	vegetable,root vegetable		vegan,vegetarian,cassava	84	160 1.36 0.28 0.074 0.000 0.075 0.048 38.06 1.70 - 1.8 0.0 0 14 271 16 0.27 0.0 59.68 0.62	- 206 usda/11134		usda/11134
F	taro	eddoe;dasheen	vegetable	vegetable,root vegetable		vegan,vegetarian	86	112 1.50 0.20 0.041 0.000 0.016 0.083 26.46 0.40 - 4.1 0.0 0 11 591 43 0.55 0.0 70.64 1.20	- 104 usda/11518;sliced 104 usda/11518		usda/11518
F	jicama	yam bean	vegetable	vegetable,root vegetable		vegan,vegetarian	92	38 0.72 0.09 0.021 0.000 0.005 0.043 8.82 1.80 - 4.9 0.0 0 4 150 12 0.60 0.0 90.07 0.30	- 130 usda/11603;sliced 120 usda/11603	slice/- 6 usda/11603;-/large 1200 usda/11603;-/medium 659 usda/11603;-/small 365 usda/11603;-/- 365 659 1200 usda/11603	usda/11603
F	lotus root		vegetable	vegetable,root vegetable		vegan,vegetarian	79	74 2.60 0.10 0.030 0.000 0.020 0.020 17.23 - - 4.9 - 0 40 556 45 1.16 0.0 79.10 0.97		slice/- 8.1 usda/11254;-/- 115 usda/11254	usda/11254
F	burdock root	burdock;gobo	vegetable	vegetable,root vegetable		vegan,vegetarian	75	72 1.53 0.15 0.025 0.000 0.037 0.059 17.34 2.90 - 3.3 0.0 0 5 308 41 0.80 0.0 80.09 0.89	- 118 usda/11104	-/- 156 usda/11104	usda/11104
F	kohlrabi		vegetable	vegetable,root vegetable,brassica		vegan,vegetarian	46	27 1.70 0.10 0.013 0.000 0.007 0.048 6.20 2.60 - 3.6 0.0 0 20 350 24 0.40 0.0 91.00 1.00	- 135 usda/11241	slice/- 16 usda/11241;-/- 150 225 300 practice	usda/11241
F	water chestnuts	tinned water chestnuts;canned water chestnuts	vegetable	vegetable,root vegetable		vegan,vegetarian	100	50 0.88 0.06 0.016 0.000 0.001 0.026 12.30 2.46 - 2.5 0.0 0 8 118 4 0.87 0.0 86.42 0.34	- 140 usda/11590;sliced 140 usda/11590		usda/11590
F	bamboo shoots	tinned bamboo shoots;canned bamboo shoots	vegetable	vegetable,root vegetable		vegan,vegetarian	100	19 1.72 0.40 0.092 0.000 0.009 0.178 3.22 1.89 - 1.4 0.0 0 7 80 8 0.32 0.0 94.32 0.34	- 131 usda/11028		usda/11028
F	potato	main-crop potato;white potato;old potato;all-purpose potato;raw potato	vegetable	vegetable,potato		vegan,vegetarian	75	77 2.05 0.09 0.025 0.000 0.002 0.042 17.49 0.82 15.29 2.1 0.0 0 6 425 12 0.81 0.0 79.25 1.11	- 150 usda/11352;diced 150 usda/11352	-/large 369 usda/11352;-/medium 213 usda/11352;-/small 170 usda/11352;-/- 170 213 369 usda/11352	usda/11352
F	waxy potato	salad potato;firm potato;waxy boiling potato;charlotte potato;yellow potato;red potato;red-skinned potato;fingerling potato	vegetable	vegetable,potato		vegan,vegetarian	75	70 1.89 0.14 0.035 0.000 0.003 0.059 15.90 1.29 13.35 1.7 0.0 0 18 455 10 0.73 0.0 80.96 1.10	- 150 usda/11355;diced 150 usda/11355	-/large 369 usda/11355;-/medium 213 usda/11355;-/small 170 usda/11355;-/- 170 213 369 usda/11355	usda/11355
F	new potato	baby potato;baby new potato;small new potato;small waxy potato	vegetable	vegetable,potato		vegan,vegetarian	75	70 1.89 0.14 0.035 0.000 0.003 0.059 15.90 1.29 13.35 1.7 0.0 0 18 455 10 0.73 0.0 80.96 1.10		-/- 30 45 60 practice	usda/11355/stand-in
F	floury potato	baking potato;russet potato;king edward potato;maris piper potato;mealy potato;starchy potato;mashing potato;jacket potato	vegetable	vegetable,potato		vegan,vegetarian	75	79 2.14 0.08 0.026 0.000 0.002 0.043 18.07 0.62 15.86 1.3 - 0 5 417 13 0.86 0.0 78.58 1.13	- 150 usda/11353;diced 150 usda/11353	-/large 369 usda/11353;-/medium 213 usda/11353;-/small 170 usda/11353;-/- 170 213 369 usda/11353	usda/11353
F	mashed potato	cooked mashed potato	vegetable		?milk		100	83 1.91 0.57 0.302 - 0.124 0.065 17.57 1.48 - 1.5 0.0 2 302 296 24 0.27 0.2 78.48 1.46	- 210 usda/11657		usda/11657
F	instant mashed potato	potato flakes;dried potato flakes;instant mash	vegetable	vegetable,potato	?		100	354 8.34 0.41 0.169 - 0.009 0.143 81.17 3.36 70.60 6.6 0.0 0 77 1098 27 1.21 0.0 6.58 3.50	- 60 usda/11378		usda/11378
F	white cabbage	cabbage;green cabbage;dutch white cabbage;hard white cabbage	vegetable	vegetable,brassica		vegan,vegetarian	80	25 1.28 0.10 0.034 0.000 0.017 0.017 5.80 3.20 0.00 2.5 0.0 0 18 170 40 0.47 0.0 92.18 0.64	- 70 79.5 89 usda/11109;chopped 89 usda/11109;grated 70 usda/11109	head/large 1248 usda/11109;head/medium 908 usda/11109;head/small 714 usda/11109;head/- 714 908 1248 usda/11109;leaf/large 33 usda/11109;leaf/medium 23 usda/11109;leaf/- 15 15 33 usda/11109;-/medium 900 1100 1300 practice;-/- 700 1100 1500 practice	usda/11109
F	red cabbage		vegetable	vegetable,brassica		vegan,vegetarian	80	31 1.43 0.16 0.021 0.000 0.012 0.080 7.37 3.83 0.00 2.1 0.0 0 27 243 45 0.80 0.0 90.39 0.64	- 70 79.5 89 usda/11112;chopped 89 usda/11112;grated 70 usda/11112	head/large 1134 usda/11112;head/medium 839 usda/11112;head/small 567 usda/11112;head/- 567 839 1134 usda/11112;leaf/- 23 usda/11112;-/large 1134 usda/11112;-/medium 839 usda/11112;-/small 567 usda/11112;-/- 567 839 1134 usda/11112	usda/11112
F	Savoy cabbage		vegetable	vegetable,brassica		vegan,vegetarian	80	27 2.00 0.10 0.013 0.000 0.007 0.049 6.10 2.27 - 3.1 0.0 0 28 230 35 0.40 0.0 91.00 0.80	- 70 usda/11114;grated 70 usda/11114	-/- 500 850 1200 practice	usda/11114
F	pointed cabbage	sweetheart cabbage;hispi cabbage;hispi;spring cabbage	vegetable	vegetable,brassica		vegan,vegetarian	80	25 1.28 0.10 0.034 0.000 0.017 0.017 5.80 3.20 0.00 2.5 0.0 0 18 170 40 0.47 0.0 92.18 0.64	- 60 70 80 practice;grated 60 70 80 practice	-/- 350 525 700 practice	usda/11109/stand-in
F	spring greens	collard greens;collards;greens	vegetable	vegetable,brassica		vegan,vegetarian	57	32 3.02 0.61 0.055 0.000 0.030 0.201 5.42 0.46 - 4.0 0.0 0 17 213 232 0.47 0.0 89.62 1.32	- 36 usda/11161;chopped 36 usda/11161		usda/11161
F	Chinese leaf	napa cabbage;chinese cabbage	vegetable	vegetable,brassica		vegan,vegetarian	93	16 1.20 0.20 0.043 0.000 0.023 0.072 3.23 1.41 - 1.2 0.0 0 9 238 77 0.31 0.0 94.39 0.98	- 76 usda/11119;grated 76 usda/11119		usda/11119
F	pak choi	bok choy;pak choy;baby pak choi	vegetable	vegetable,brassica		vegan,vegetarian	88	13 1.50 0.20 0.027 0.000 0.015 0.096 2.18 1.18 - 1.0 0.0 0 65 252 105 0.80 0.0 95.32 0.80	- 70 usda/11116;grated 70 usda/11116	head/- 840 usda/11116;leaf/- 14 usda/11116;-/- 840 usda/11116	usda/11116
F	kale	curly kale;green kale;lacinato kale;black kale;cavolo nero;dinosaur kale	vegetable	vegetable,brassica,leafy green		vegan,vegetarian	72	49 4.28 0.93 0.091 0.000 0.052 0.338 8.75 2.26 - 3.6 0.0 0 38 491 150 1.47 0.0 84.04 2.01	- 16 usda/11233		usda/11233
F	Brussels sprout	brussel sprouts;button sprouts	vegetable	vegetable,brassica		vegan,vegetarian	90	43 3.38 0.30 0.062 0.000 0.023 0.153 8.95 2.20 - 3.8 0.0 0 25 389 42 1.40 0.0 86.00 1.37	- 88 usda/11098	-/- 19 usda/11098	usda/11098
F	broccoli	broccoli florets;calabrese;calabrese broccoli	vegetable	vegetable,brassica		vegan,vegetarian	61	34 2.82 0.37 0.039 0.000 0.011 0.038 6.64 1.70 0.00 2.6 0.0 0 33 316 47 0.73 0.0 89.30 0.87	- 88 88 91 usda/11090;chopped 88 89.5 91 usda/11090;diced 88 usda/11090	bunch/- 608 usda/11090;head/- 300 400 500 practice;spear/- 31 usda/11090;stalk/- 151 usda/11090;-/- 300 400 500 practice	usda/11090
F	long-stem broccoli	sprouting broccoli;purple sprouting broccoli	vegetable	vegetable,brassica		vegan,vegetarian	61	34 2.82 0.37 0.039 0.000 0.011 0.038 6.64 1.70 0.00 2.6 0.0 0 33 316 47 0.73 0.0 89.30 0.87		spear/- 15 22.5 30 practice	usda/11090/stand-in
F	broccoli raab	rapini;cime di rapa	vegetable	vegetable,brassica		vegan,vegetarian	100	22 3.17 0.49 0.050 0.000 0.026 0.130 2.85 0.38 - 2.7 0.0 0 33 196 108 2.14 0.0 92.55 0.93	- 40 usda/11096;chopped 40 usda/11096	stalk/- 19 usda/11096	usda/11096
F	cauliflower	cauliflower florets	vegetable	vegetable,brassica		vegan,vegetarian	39	25 1.92 0.28 0.130 0.000 0.034 0.031 4.97 1.91 - 2.0 0.0 0 30 299 22 0.42 0.0 92.07 0.76	- 107 usda/11135;chopped 107 usda/11135	head/large 840 usda/11135;head/medium 588 usda/11135;head/small 265 usda/11135;head/- 265 588 840 usda/11135;-/large 840 usda/11135;-/medium 588 usda/11135;-/small 265 usda/11135;-/- 265 588 840 usda/11135	usda/11135
F	romanesco	romanesco broccoli;green cauliflower	vegetable	vegetable,brassica		vegan,vegetarian	61	31 2.95 0.30 0.047 0.000 0.028 0.133 6.09 3.03 - 3.2 0.0 0 23 300 33 0.73 0.0 89.79 0.88	- 64 usda/11965	head/large 511 usda/11965;head/medium 431 usda/11965;head/small 325 usda/11965;head/- 325 431 511 usda/11965;-/large 511 usda/11965;-/medium 431 usda/11965;-/small 325 usda/11965;-/- 325 431 511 usda/11965	usda/11965
F	mustard greens		vegetable	vegetable,brassica	mustard	vegan,vegetarian	93	27 2.86 0.42 0.010 0.000 0.092 0.038 4.67 1.32 - 3.2 0.0 0 20 384 115 1.64 0.0 90.70 1.36	- 56 usda/11270;chopped 56 usda/11270		usda/11270
F	turnip tops	turnip greens	vegetable	vegetable,brassica		vegan,vegetarian	70	32 1.50 0.30 0.070 0.000 0.020 0.120 7.13 0.81 - 3.2 0.0 0 40 296 190 1.10 0.0 89.67 1.40	- 55 usda/11568;chopped 55 usda/11568		usda/11568
F	watercress		vegetable	vegetable,brassica,salad leaf		vegan,vegetarian	92	11 2.30 0.10 0.027 0.000 0.008 0.035 1.29 0.20 - 0.5 0.0 0 41 330 120 0.20 0.0 95.11 1.20	- 34 usda/11591;chopped 34 usda/11591	sprig/- 2.5 usda/11591	usda/11591
F	cress	garden cress;mustard and cress;salad cress	vegetable	vegetable,brassica,salad leaf		vegan,vegetarian	71	32 2.60 0.70 0.023 0.000 0.239 0.228 5.50 4.40 - 1.1 0.0 0 14 606 81 1.30 0.0 89.40 1.80	- 50 usda/11203	sprig/- 1 usda/11203	usda/11203
F	sauerkraut	fermented cabbage	vegetable	vegetable,brassica,pickle		vegan,vegetarian	100	19 0.91 0.14 0.034 0.000 0.013 0.067 4.28 1.78 - 2.9 0.0 0 661 170 30 1.47 0.0 92.52 2.15	- 142 189 236 usda/11439		usda/11439
F	kimchi		vegetable	pickle	?		100	15 1.10 0.50 0.067 - 0.037 0.241 2.40 1.06 - 1.6 0.0 0 498 151 33 2.50 0.0 94.30 1.70	- 150 usda/11118		usda/11118
F	spinach	fresh spinach;spinach leaves;baby spinach;leaf spinach;baby leaf spinach	vegetable	vegetable,leafy green		vegan,vegetarian	72	23 2.86 0.39 0.063 0.000 0.010 0.165 3.63 0.42 - 2.2 0.0 0 79 558 99 2.71 0.0 91.40 1.72	- 30 usda/11457	bunch/- 340 usda/11457;leaf/- 10 usda/11457	usda/11457
F	frozen spinach	frozen leaf spinach;frozen chopped spinach;chopped frozen spinach	vegetable	vegetable,leafy green		vegan,vegetarian	100	29 3.63 0.57 0.041 0.000 0.000 0.082 4.21 0.65 0.00 2.9 0.0 0 74 346 129 1.89 0.0 90.17 1.43	- 156 usda/11463		usda/11463
F	Swiss chard	chard;rainbow chard;silverbeet	vegetable	vegetable,leafy green		vegan,vegetarian	92	19 1.80 0.20 0.030 0.000 0.040 0.070 3.74 1.10 - 1.6 0.0 0 213 379 51 1.80 0.0 92.66 1.60	- 36 usda/11147	leaf/- 48 usda/11147	usda/11147
F	beet greens	beet tops;beetroot leaves;beet leaves	vegetable	vegetable,leafy green		vegan,vegetarian	56	22 2.20 0.13 0.020 0.000 0.026 0.046 4.33 0.50 - 3.7 0.0 0 226 762 117 2.57 0.0 91.02 2.33	- 38 usda/11086	leaf/- 32 usda/11086	usda/11086
F	sorrel	sorrel leaves;dock	vegetable	vegetable,leafy green		vegan,vegetarian	70	22 2.00 0.70 - 0.000 - - 3.20 - - 2.9 - 0 4 390 44 2.40 0.0 93.00 1.10	- 133 usda/11616;chopped 133 usda/11616		usda/11616
F	nettles	stinging nettles;nettle leaves	vegetable	vegetable,leafy green		vegan,vegetarian					
F	dandelion leaves	dandelion greens	vegetable	vegetable,leafy green		vegan,vegetarian	100	45 2.70 0.70 0.170 0.000 0.014 0.306 9.20 0.71 - 3.5 0.0 0 76 397 187 3.10 0.0 85.60 1.80	- 55 usda/11207;chopped 55 usda/11207		usda/11207
F	vine leaves	grape leaves;preserved vine leaves	vegetable	vegetable,leafy green		vegan,vegetarian	100	69 4.27 1.97 0.312 0.000 0.076 0.989 11.71 - - 9.9 0.0 0 2853 29 289 2.98 0.0 76.10 5.95		leaf/- 4 usda/11975	usda/11975
F	curly endive	frisée;endive	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	86	17 1.25 0.20 0.048 0.000 0.004 0.087 3.35 0.25 - 3.1 0.0 0 22 314 52 0.83 0.0 93.79 1.41	- 50 usda/11213;chopped 50 usda/11213	head/- 513 usda/11213;-/- 513 usda/11213	usda/11213
F	chicory	witloof;belgian endive;white chicory;red chicory	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	89	17 0.90 0.10 0.024 0.000 0.002 0.044 4.00 - - 3.1 - 0 2 211 19 0.24 0.0 94.52 0.47	- 90 usda/11151	head/- 53 usda/11151;-/- 53 usda/11151	usda/11151
F	radicchio		vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	91	23 1.43 0.25 0.060 0.000 0.010 0.110 4.48 0.60 - 0.9 0.0 0 22 302 19 0.57 0.0 93.14 0.70	- 40 usda/11952;grated 40 usda/11952	leaf/- 8 usda/11952	usda/11952
F	lettuce	green leaf lettuce;leaf lettuce	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	64	15 1.36 0.15 0.020 0.000 0.006 0.082 2.87 0.78 0.00 1.3 0.0 0 28 194 36 0.86 0.0 94.98 0.62	- 36 usda/11253;grated 36 usda/11253	head/- 360 usda/11253;-/- 360 usda/11253	usda/11253
F	round lettuce	butterhead lettuce;butter lettuce;soft lettuce	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	74	13 1.35 0.22 0.029 0.000 0.008 0.117 2.23 0.94 - 1.1 0.0 0 5 238 35 1.24 0.0 95.63 0.57	- 55 usda/11250;chopped 55 usda/11250;grated 55 usda/11250	head/- 163 usda/11250;leaf/large 15 usda/11250;leaf/medium 7.5 usda/11250;leaf/- 5 5 15 usda/11250;-/- 163 usda/11250	usda/11250
F	cos lettuce	romaine lettuce;romaine;little gem lettuce;little gem;romaine heart	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	94	17 1.23 0.30 0.039 0.000 0.012 0.160 3.29 1.19 0.00 2.1 0.0 0 8 247 33 0.97 0.0 94.61 0.58	- 47 usda/11251;grated 47 usda/11251	head/- 626 usda/11251;-/- 626 usda/11251	usda/11251
F	iceberg lettuce	iceberg;crisphead lettuce	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	95	14 0.90 0.14 0.018 0.000 0.006 0.074 2.97 1.97 - 1.2 0.0 0 10 141 18 0.41 0.0 95.64 0.36	- 57 64.5 72 usda/11252;chopped 57 usda/11252;grated 72 usda/11252	head/large 755 usda/11252;head/medium 539 usda/11252;head/small 324 usda/11252;head/- 324 539 755 usda/11252;leaf/large 15 usda/11252;leaf/medium 8 usda/11252;leaf/small 5 usda/11252;leaf/- 5 8 15 usda/11252;-/large 755 usda/11252;-/medium 539 usda/11252;-/small 324 usda/11252;-/- 324 539 755 usda/11252	usda/11252
F	rocket	arugula;rocket leaves;wild rocket;baby rocket	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	60	25 2.58 0.66 0.086 0.000 0.049 0.319 3.65 2.05 - 1.6 0.0 0 27 369 160 1.46 0.0 91.71 1.40	- 20 usda/11959	leaf/- 2 usda/11959	usda/11959
F	lamb's lettuce	corn salad;mâche	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian		21 2.00 0.40 - 0.000 - - 3.60 - - - - 0 4 459 38 2.18 0.0 92.80 1.20	- 56 usda/11190		usda/11190
F	mixed salad leaves	salad leaves;mixed leaves;mesclun;mixed greens;salad greens;baby leaves;mixed salad;baby salad leaves	vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	64	15 1.36 0.15 0.020 0.000 0.006 0.082 2.87 0.78 0.00 1.3 0.0 0 28 194 36 0.86 0.0 94.98 0.62	- 36 usda/11253;grated 36 usda/11253	head/- 360 usda/11253;-/- 360 usda/11253	usda/11253/stand-in
F	purslane		vegetable	vegetable,leafy green,salad leaf		vegan,vegetarian	76	20 2.03 0.36 - 0.000 - - 3.39 - - - 0.0 0 45 494 65 1.99 0.0 92.86 1.36	- 43 usda/11427		usda/11427
F	water spinach		vegetable	vegetable,leafy green		vegan,vegetarian	77	19 2.60 0.20 - 0.000 - - 3.14 - - 2.1 - 0 113 312 77 1.67 0.0 92.47 1.60	- 56 usda/11503;chopped 56 usda/11503		usda/11503
F	amaranth leaves	callaloo	vegetable	vegetable,leafy green		vegan,vegetarian	94	23 2.46 0.33 0.091 0.000 0.076 0.147 4.02 - - - - 0 20 611 215 2.32 0.0 91.69 1.50	- 28 usda/11003	leaf/- 14 usda/11003	usda/11003
F	celery	celery stick=stalk;celery stalk=stalk;celery rib=stalk;stick of celery=stalk;stick celery=stalk	vegetable	vegetable,stalk vegetable	celery	vegan,vegetarian	89	16 0.69 0.17 0.042 0.000 0.032 0.079 2.97 1.34 0.00 1.6 0.0 0 80 260 40 0.20 0.0 95.43 0.75	- 101 110.5 120 usda/11143;chopped 101 usda/11143	stalk/large 64 usda/11143;stalk/medium 40 usda/11143;stalk/small 17 usda/11143;stalk/- 17 40 64 usda/11143;stick/- 40 52 64 practice;strip/- 4 usda/11143;-/- 40 52 64 practice	usda/11143
F	asparagus	asparagus spear=spear;green asparagus;asparagus tips;white asparagus	vegetable	vegetable,stalk vegetable		vegan,vegetarian	53	20 2.20 0.12 0.040 0.000 0.000 0.050 3.88 1.88 - 2.1 0.0 0 2 202 24 2.14 0.0 93.22 0.58	- 134 usda/11011	spear/extra_large 24 usda/11011;spear/large 20 usda/11011;spear/medium 16 usda/11011;spear/small 12 usda/11011;spear/- 12 16 20 usda/11011	usda/11011
F	fennel	fennel bulb;florence fennel;bulb fennel;bulb of fennel	vegetable	vegetable,stalk vegetable		vegan,vegetarian	72	31 1.24 0.20 0.090 0.000 0.068 0.169 7.30 3.93 - 3.1 0.0 0 52 414 49 0.73 0.0 90.21 1.05	- 87 usda/11957;sliced 87 usda/11957	bulb/- 234 usda/11957;-/- 234 usda/11957	usda/11957
F	globe artichoke	fresh artichoke	vegetable	vegetable,stalk vegetable		vegan,vegetarian	40	47 3.27 0.15 0.036 0.000 0.005 0.064 10.51 0.99 - 5.4 0.0 0 94 370 44 1.28 0.0 84.94 1.13		-/large 162 usda/11007;-/medium 128 usda/11007;-/- 128 128 162 usda/11007	usda/11007
F	artichoke hearts	tinned artichoke hearts;canned artichoke hearts;artichoke hearts in oil;marinated artichoke hearts	vegetable	vegetable,stalk vegetable		vegan,vegetarian	40	53 2.89 0.34 0.079 0.000 0.011 0.145 11.95 0.99 0.00 5.7 0.0 0 60 286 21 0.61 0.0 84.08 0.74		-/- 15 27.5 40 practice	usda/11008/stand-in
F	cardoon		vegetable	vegetable,stalk vegetable		vegan,vegetarian	49	17 0.70 0.10 0.011 0.000 0.018 0.041 4.07 - - 1.6 - 0 170 400 70 0.70 0.0 94.00 1.13	- 178 usda/11122;grated 178 usda/11122		usda/11122
F	hearts of palm	palm hearts	vegetable	vegetable,stalk vegetable		vegan,vegetarian	100	28 2.52 0.62 0.130 0.000 0.103 0.202 4.62 - - 2.4 - 0 426 177 58 3.13 0.0 90.20 2.04	- 146 usda/11961	-/- 33 usda/11961	usda/11961
F	bean sprouts	beansprouts;mung bean sprouts	vegetable	vegetable,stalk vegetable		vegan,vegetarian,sprouts	100	30 3.04 0.18 0.046 0.000 0.022 0.058 5.94 4.13 - 1.8 0.0 0 6 149 13 0.91 0.0 90.40 0.44	- 104 usda/11043		usda/11043
F	alfalfa sprouts		vegetable	vegetable,stalk vegetable		vegan,vegetarian,sprouts	100	23 3.99 0.69 0.069 0.000 0.056 0.409 2.10 0.20 - 1.9 0.0 0 6 79 32 0.96 0.0 92.82 0.40	- 33 40.5 48 usda/11001		usda/11001
F	samphire	marsh samphire;sea beans	vegetable	vegetable,stalk vegetable		vegan,vegetarian					
F	tomato	ripe tomato;vine tomato;salad tomato;red tomato;fresh tomato;beef tomato;vine-ripened tomato	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	91	18 0.88 0.20 0.028 0.000 0.031 0.083 3.89 2.63 0.00 1.2 0.0 0 5 237 10 0.27 0.0 94.52 0.50	- 180 usda/11529;chopped 180 usda/11529;sliced 180 usda/11529	slice/medium 20 usda/11529;slice/- 15 21 27 usda/11529;wedge/- 31 usda/11529;-/large 182 usda/11529;-/medium 123 usda/11529;-/small 91 usda/11529;-/- 91 123 182 usda/11529	usda/11529
F	cherry tomato	baby plum tomato;grape tomato;cherry vine tomato	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	91	18 0.88 0.20 0.028 0.000 0.031 0.083 3.89 2.63 0.00 1.2 0.0 0 5 237 10 0.27 0.0 94.52 0.50	- 149 practice	-/- 17 practice	usda/11529/stand-in
F	plum tomato	roma tomato;italian tomato;fresh plum tomato	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	91	18 0.88 0.20 0.028 0.000 0.031 0.083 3.89 2.63 0.00 1.2 0.0 0 5 237 10 0.27 0.0 94.52 0.50	- 180 practice;chopped 180 practice	-/- 62 practice	usda/11529/stand-in
F	green tomato	unripe tomato	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	91	23 1.20 0.20 0.028 0.000 0.030 0.081 5.10 4.00 - 1.1 0.0 0 13 204 13 0.51 0.0 93.00 0.50	- 180 usda/11527	slice/- 20 usda/11527;-/large 182 usda/11527;-/medium 123 usda/11527;-/small 91 usda/11527;-/- 91 123 182 usda/11527	usda/11527
F	red pepper	sweet red pepper;red bell pepper;red capsicum;romano pepper;sweet pepper	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	82	31 0.99 0.30 0.027 0.000 0.003 0.070 6.03 4.20 0.00 2.1 0.0 0 4 211 7 0.43 0.0 92.21 0.47	- 92 148.8 149 usda/11821;chopped 149 usda/11821;sliced 92 usda/11821	-/large 164 usda/11821;-/medium 119 usda/11821;-/small 74 usda/11821;-/- 74 119 164 usda/11821	usda/11821
F	green pepper	green bell pepper;green capsicum	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	82	20 0.86 0.17 0.058 0.000 0.008 0.062 4.64 2.40 0.00 1.7 0.0 0 3 175 10 0.34 0.0 93.89 0.43	- 92 148.8 149 usda/11333;chopped 149 usda/11333;sliced 92 usda/11333	strip/- 2.7 usda/11333;-/large 164 usda/11333;-/medium 119 usda/11333;-/small 74 usda/11333;-/- 74 119 164 usda/11333	usda/11333
F	yellow pepper	yellow bell pepper;orange pepper;orange bell pepper	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	82	27 1.00 0.21 0.031 0.000 - - 6.32 - - 0.9 - 0 2 212 11 0.46 0.0 92.02 0.45		strip/- 5.2 usda/11951;-/large 186 usda/11951;-/- 186 usda/11951	usda/11951
F	roasted red peppers	roasted peppers;jarred roasted red peppers;roasted red peppers in oil;chargrilled peppers;piquillo peppers	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	100	18 0.80 0.30 0.045 0.000 0.020 0.161 3.90 - - 1.2 - 0 1369 146 41 0.80 0.0 91.25 3.75		-/- 80 100 120 practice	usda/11916/stand-in
F	pimento	canned pimento;pimientos	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	100	23 1.10 0.30 0.045 0.000 0.020 0.161 5.10 2.71 - 1.9 0.0 0 14 158 6 1.68 0.0 93.10 0.40	- 192 usda/11943	slice/- 1 usda/11943;-/- 66 usda/11943	usda/11943
F	aubergine	eggplant;italian eggplant	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	81	25 0.98 0.18 0.034 0.000 0.016 0.076 5.88 3.53 - 3.0 0.0 0 2 229 9 0.23 0.0 92.30 0.66	- 82 usda/11209;diced 82 usda/11209	-/- 458 503 548 usda/11209	usda/11209
F	courgette	zucchini;green courgette;yellow courgette;baby courgette;summer squash	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	95	17 1.21 0.32 0.084 0.000 0.011 0.091 3.11 2.50 0.00 1.0 0.0 0 8 261 16 0.37 0.0 94.79 0.58	- 113 118.5 124 usda/11477;chopped 124 usda/11477;sliced 113 usda/11477	slice/- 9.9 usda/11477;-/large 323 usda/11477;-/medium 196 usda/11477;-/small 118 usda/11477;-/- 118 196 323 usda/11477	usda/11477
F	marrow	vegetable marrow	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	95	17 1.21 0.32 0.084 0.000 0.011 0.091 3.11 2.50 0.00 1.0 0.0 0 8 261 16 0.37 0.0 94.79 0.58		-/- 800 1150 1500 practice	usda/11477/stand-in
F	patty pan squash	pattypan squash;scallop squash	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	98	18 1.20 0.20 0.041 0.000 0.015 0.084 3.84 2.39 - 1.2 0.0 0 1 182 19 0.40 0.0 94.18 0.58	- 130 usda/11475;sliced 130 usda/11475		usda/11475
F	yellow squash	crookneck squash	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	99	19 1.01 0.27 0.093 0.000 0.013 0.082 3.88 2.88 0.00 1.0 0.0 0 2 222 21 0.44 0.0 94.28 0.56	- 127 usda/11467;sliced 127 usda/11467		usda/11467
F	cucumber	english cucumber;hothouse cucumber;salad cucumber;mini cucumber;seedless cucumber;ridge cucumber	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	97	15 0.65 0.11 0.037 0.000 0.005 0.032 3.63 1.67 0.83 0.5 0.0 0 2 147 16 0.28 0.0 95.23 0.38	- 104 usda/11205;sliced 104 usda/11205	-/- 301 usda/11205	usda/11205
F	pickling cucumber	small pickling cucumber;kirby cucumber	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	97	15 0.65 0.11 0.037 0.000 0.005 0.032 3.63 1.67 0.83 0.5 0.0 0 2 147 16 0.28 0.0 95.23 0.38		-/- 40 60 80 practice	usda/11205/stand-in
F	pumpkin	pumpkin flesh;fresh pumpkin;culinary pumpkin	vegetable	vegetable,fruiting vegetable,squash		vegan,vegetarian	70	26 1.00 0.10 0.052 0.000 0.013 0.005 6.50 2.76 - 0.5 0.0 0 1 340 21 0.80 0.0 91.60 0.80	- 116 usda/11422		usda/11422
F	pumpkin purée	tinned pumpkin;canned pumpkin;pumpkin puree;canned pumpkin purée;solid-pack pumpkin;canned pumpkin puree	vegetable	vegetable,fruiting vegetable,squash		vegan,vegetarian	100	34 1.10 0.28 0.146 0.000 0.037 0.015 8.09 3.30 - 2.9 0.0 0 5 206 26 1.39 0.0 89.97 0.56	- 245 usda/11424		usda/11424
F	butternut squash	butternut	vegetable	vegetable,fruiting vegetable,squash		vegan,vegetarian	84	45 1.00 0.10 0.021 0.000 0.007 0.042 11.69 2.20 - 2.0 0.0 0 4 352 48 0.70 0.0 86.41 0.80	- 140 usda/11485;diced 140 usda/11485	-/- 800 1150 1500 practice	usda/11485
F	acorn squash		vegetable	vegetable,fruiting vegetable,squash		vegan,vegetarian	76	40 0.80 0.10 0.021 0.000 0.007 0.042 10.42 - - 1.5 - 0 3 347 33 0.70 0.0 87.78 0.90	- 140 usda/11482;diced 140 usda/11482	-/- 431 usda/11482	usda/11482
F	spaghetti squash		vegetable	vegetable,fruiting vegetable,squash		vegan,vegetarian	71	31 0.64 0.57 0.117 0.000 0.042 0.239 6.91 2.76 - 1.5 0.0 0 17 108 23 0.31 0.0 91.60 0.28	- 101 usda/11492;diced 101 usda/11492		usda/11492
F	hubbard squash	kabocha squash;onion squash;winter squash;red kuri squash;crown prince squash	vegetable	vegetable,fruiting vegetable,squash		vegan,vegetarian	71	34 0.95 0.13 0.027 0.000 0.010 0.056 8.59 2.20 - 1.5 0.0 0 4 350 28 0.58 0.0 89.76 0.57	- 116 usda/11643;diced 116 usda/11643		usda/11643
F	okra	ladies' fingers;bhindi	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	86	33 1.93 0.19 0.026 0.000 0.017 0.027 7.45 1.48 0.34 3.2 0.0 0 7 299 82 0.62 0.0 89.58 0.86	- 100 usda/11278	pod/- 11.875 usda/11278	usda/11278
F	sweetcorn	sweetcorn kernels;corn kernels;fresh corn;sweet corn;frozen sweetcorn;frozen corn;corn	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	36	86 3.27 1.35 0.325 0.000 0.432 0.487 18.70 6.26 5.70 2.0 0.0 0 15 270 2 0.52 0.0 76.05 0.62	- 145 usda/11167,practice	ear/small 73 usda/11167;ear/- 73 usda/11167	usda/11167
F	corn on the cob	sweetcorn cob;ear of corn;corn cob;cob of corn	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	36	86 3.27 1.35 0.325 0.000 0.432 0.487 18.70 6.26 5.70 2.0 0.0 0 15 270 2 0.52 0.0 76.05 0.62		-/- 73 108 143 practice	usda/11167/stand-in
F	tinned sweetcorn	canned corn;canned sweetcorn;drained sweetcorn;tinned sweetcorn kernels	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	100	67 2.29 1.22 0.245 0.000 0.374 0.519 14.34 4.44 8.06 2.0 0.0 0 205 132 3 0.27 0.0 81.41 0.75	- 164 usda/11172		usda/11172
F	creamed corn	cream-style corn;canned creamed corn	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	100	72 1.74 0.42 0.065 0.000 0.123 0.198 18.13 3.23 - 1.2 0.0 0 261 134 3 0.38 0.0 78.73 0.98	- 256 usda/11174		usda/11174
F	baby corn	baby sweetcorn	vegetable	vegetable,fruiting vegetable		vegan,vegetarian					
F	avocado	hass avocado;ripe avocado	fruit,vegetable	vegetable,fruiting vegetable		vegan,vegetarian	74	160 2.00 14.66 2.126 0.000 9.799 1.816 8.53 0.66 0.11 6.7 0.0 0 7 485 12 0.55 0.0 73.23 1.58	- 146 148 150 usda/09037;diced 150 usda/09037;puréed 230 usda/09037;sliced 146 usda/09037	-/- 201 usda/09037	usda/09037
F	tomatillo		vegetable	vegetable,fruiting vegetable		vegan,vegetarian		32 0.96 1.02 0.139 0.000 0.155 0.417 5.84 3.93 - 1.9 0.0 0 1 268 7 0.62 0.0 91.63 0.55	- 132 usda/11954;chopped 132 usda/11954;diced 132 usda/11954	-/medium 34 usda/11954;-/- 34 usda/11954	usda/11954
F	chayote	cho-cho;christophene	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	99	19 0.82 0.13 0.028 0.000 0.010 0.057 4.51 1.66 - 1.7 0.0 0 2 125 17 0.34 0.0 94.24 0.30	- 132 usda/11149	-/- 203 usda/11149	usda/11149
F	bitter melon	bitter gourd;karela	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	83	17 1.00 0.17 - 0.000 - - 3.70 - - 2.8 - 0 5 296 19 0.43 0.0 94.03 1.10	- 93 usda/11024		usda/11024
F	plantain	ripe plantain;green plantain	fruit	vegetable,fruiting vegetable		vegan,vegetarian	65	122 1.30 0.37 0.143 0.000 0.032 0.069 31.89 15.00 - 2.3 0.0 0 4 499 3 0.60 0.0 65.28 1.17	- 148 usda/09277;sliced 148 usda/09277	-/medium 179 usda/09277;-/- 179 usda/09277	usda/09277
F	breadfruit		fruit	vegetable,fruiting vegetable		vegan,vegetarian	78	103 1.07 0.23 0.048 0.000 0.034 0.066 27.12 11.00 - 4.9 0.0 0 2 490 17 0.54 0.0 70.65 0.93	- 220 usda/09059	-/small 384 usda/09059;-/- 384 usda/09059	usda/09059
F	jackfruit	fresh jackfruit	fruit	vegetable,fruiting vegetable		vegan,vegetarian	28	95 1.72 0.64 0.195 0.000 0.155 0.094 23.25 19.08 1.47 1.5 0.0 0 2 448 24 0.23 - 73.46 0.94	- 151 158 165 usda/09144;chopped 151 usda/09144;sliced 165 usda/09144		usda/09144
F	tinned young jackfruit	young green jackfruit	fruit	vegetable,fruiting vegetable		vegan,vegetarian					
F	nopales	cactus paddles	vegetable	vegetable,fruiting vegetable		vegan,vegetarian	96	16 1.32 0.09 0.016 0.000 0.018 0.050 3.33 1.15 - 2.2 0.0 0 21 257 164 0.59 0.0 94.12 1.14	- 86 usda/11963;sliced 86 usda/11963		usda/11963
F	fresh chilli	chilli;chili;chile;hot pepper;hot chilli;fresh chili;fresh chile;hot chilli pepper	vegetable	vegetable,chilli		vegan,vegetarian	73	40 1.87 0.44 0.042 0.000 0.024 0.239 8.81 5.30 - 1.5 0.0 0 9 322 14 1.03 0.0 88.02 0.87		-/- 10 27.5 45 practice	usda/11819/stand-in
F	red chilli	red chili;fresh red chilli;red chile;red chilli pepper;red chili pepper;hot red chilli;long red chilli;fresno chilli	vegetable	vegetable,chilli		vegan,vegetarian	73	40 1.87 0.44 0.042 0.000 0.024 0.239 8.81 5.30 - 1.5 0.0 0 9 322 14 1.03 0.0 88.02 0.87		-/- 10 27.5 45 practice	usda/11819
F	green chilli	green chili;fresh green chilli;green chile;green chilli pepper;green chili pepper;hot green chilli	vegetable	vegetable,chilli		vegan,vegetarian	73	40 2.00 0.20 0.021 0.000 0.011 0.109 9.46 5.10 - 1.5 0.0 0 7 340 18 1.20 0.0 87.74 0.60		-/- 10 27.5 45 practice	usda/11670
F	bird's eye chilli	thai chilli;thai chili;bird chilli;bird's-eye chili;bird's eye chile	vegetable	vegetable,chilli		vegan,vegetarian	73	40 1.87 0.44 0.042 0.000 0.024 0.239 8.81 5.30 - 1.5 0.0 0 9 322 14 1.03 0.0 88.02 0.87		-/- 1 2 3 practice	usda/11819/stand-in
F	jalapeño	jalapeño pepper;jalapeño chilli;jalapeño chile;fresh jalapeño	vegetable	vegetable,chilli		vegan,vegetarian	92	29 0.91 0.37 0.092 0.000 0.029 0.112 6.50 4.12 - 2.8 0.0 0 3 248 12 0.25 0.0 91.69 0.53	- 90 usda/11979;sliced 90 usda/11979	-/- 14 usda/11979	usda/11979
F	pickled jalapeños	jalapeños in brine;sliced pickled jalapeños;canned jalapeños	vegetable	vegetable,chilli		vegan,vegetarian	100	27 0.92 0.94 0.097 0.000 0.053 0.514 4.74 2.14 - 2.6 0.0 0 1671 193 23 1.88 0.0 88.89 4.51	- 104 120 136 usda/11632;chopped 136 usda/11632;sliced 104 usda/11632		usda/11632
F	serrano chilli	serrano pepper;serrano chile;serrano	vegetable	vegetable,chilli		vegan,vegetarian	97	32 1.74 0.44 0.059 0.000 0.023 0.222 6.70 3.83 - 3.7 0.0 0 10 305 11 0.86 0.0 90.25 0.87	- 105 usda/11977;chopped 105 usda/11977	-/- 6.1 usda/11977	usda/11977
F	habanero chilli	habanero;scotch bonnet;scotch bonnet chilli;habanero pepper;scotch bonnet pepper	vegetable	vegetable,chilli		vegan,vegetarian	73	40 1.87 0.44 0.042 0.000 0.024 0.239 8.81 5.30 - 1.5 0.0 0 9 322 14 1.03 0.0 88.02 0.87		-/- 8 11.5 15 practice	usda/11819/stand-in
F	poblano	poblano pepper;poblano chile	vegetable	vegetable,chilli		vegan,vegetarian	73	40 2.00 0.20 0.021 0.000 0.011 0.109 9.46 5.10 - 1.5 0.0 0 7 340 18 1.20 0.0 87.74 0.60		-/- 60 90 120 practice	usda/11670/stand-in
F	padron peppers	padrón pepper	vegetable	vegetable,chilli		vegan,vegetarian	82	20 0.86 0.17 0.058 0.000 0.008 0.062 4.64 2.40 0.00 1.7 0.0 0 3 175 10 0.34 0.0 93.89 0.43		-/- 8 11.5 15 practice	usda/11333/stand-in
F	ancho chilli	ancho chile;dried ancho chilli;dried ancho chile	spice	vegetable,chilli		vegan,vegetarian	100	281 11.86 8.20 0.820 0.000 0.492 4.511 51.42 - - 21.6 0.0 0 43 2411 61 10.93 0.0 22.63 5.89			usda/11978
F	pasilla chilli	pasilla chile	spice	vegetable,chilli		vegan,vegetarian	94	345 12.35 15.85 - 0.000 - - 51.13 - - 26.8 0.0 0 89 2222 97 9.83 0.0 14.84 5.82			usda/11982
F	chipotle chilli	chipotle;dried chipotle;chipotle chile	spice	vegetable,chilli		vegan,vegetarian	100	324 10.58 5.81 0.813 0.000 0.468 3.079 69.86 41.06 - 28.7 0.0 0 91 1870 45 6.04 0.0 7.15 6.60		-/- 2 3.5 5 practice	usda/11962/stand-in
F	chipotle in adobo	chipotles in adobo;chipotle paste	vegetable	vegetable,chilli	?						
F	dried red chilli	dried chilli;dried chili;dried red chili;dried chile;whole dried chilli;dried hot chilli	spice	vegetable,chilli		vegan,vegetarian	100	324 10.58 5.81 0.813 0.000 0.468 3.079 69.86 41.06 - 28.7 0.0 0 91 1870 45 6.04 0.0 7.15 6.60	- 37 usda/11962	-/- 0.5 1.25 2 practice	usda/11962
F	tinned green chillies	canned green chiles;canned green chilies;diced green chiles	vegetable	vegetable,chilli		vegan,vegetarian	100	21 0.72 0.27 0.028 0.000 0.017 0.153 4.60 - - 1.7 0.0 0 397 113 36 1.33 0.0 93.25 1.31	- 139 usda/11980		usda/11980
F	green beans	french beans;fine beans;haricots verts;string beans;fine green beans;snap beans;dwarf beans;frozen green beans	vegetable	vegetable,green bean		vegan,vegetarian	88	31 1.83 0.22 0.050 0.000 0.010 0.113 6.97 3.26 0.88 2.7 0.0 0 6 211 37 1.03 0.0 90.32 0.66	- 100 usda/11052;chopped 100 usda/11052	-/- 5.5 usda/11052	usda/11052
F	runner beans		vegetable	vegetable,green bean		vegan,vegetarian	88	31 1.83 0.22 0.050 0.000 0.010 0.113 6.97 3.26 0.88 2.7 0.0 0 6 211 37 1.03 0.0 90.32 0.66	- 100 usda/11052;chopped 100 usda/11052	-/- 5.5 usda/11052	usda/11052/stand-in
F	wax beans	yellow beans;yellow wax beans	vegetable	vegetable,green bean		vegan,vegetarian	88	31 1.82 0.12 0.026 0.000 0.005 0.059 7.13 3.27 - 3.4 0.0 0 6 209 37 1.04 0.0 90.27 0.66	- 100 usda/11722;chopped 100 usda/11722	-/- 5.5 usda/11722	usda/11722
F	broad beans	fava beans;fresh broad beans;podded broad beans;frozen broad beans;shelled fava beans	vegetable	vegetable,green bean		vegan,vegetarian,fava	97	72 5.60 0.60 0.138 0.000 0.017 0.310 11.70 - - 4.2 - 0 50 250 22 1.90 0.0 81.00 1.10	- 109 usda/11088		usda/11088
F	green peas	peas;garden peas;frozen peas;petits pois;fresh peas;frozen petits pois;shelled peas;podded peas;english peas	vegetable	vegetable,green bean		vegan,vegetarian	38	81 5.42 0.40 0.071 0.000 0.035 0.187 14.45 5.67 - 5.7 0.0 0 5 244 25 1.47 0.0 78.86 0.87	- 145 usda/11304		usda/11304
F	tinned peas	canned peas;tinned garden peas	vegetable	vegetable,green bean		vegan,vegetarian	100	68 4.47 0.80 0.143 0.000 0.071 0.375 11.36 2.99 4.04 4.9 0.0 0 273 106 23 1.18 0.0 82.29 1.09	- 175 usda/11308		usda/11308
F	mangetout	snow peas;mange tout;sugar snap peas;sugar snaps;snap peas;edible-podded peas	vegetable	vegetable,green bean		vegan,vegetarian	94	42 2.80 0.20 0.039 0.000 0.021 0.089 7.55 4.00 - 2.6 0.0 0 4 200 43 2.08 0.0 88.89 0.56	- 63 80.5 98 usda/11300;chopped 98 usda/11300;whole 63 usda/11300		usda/11300
F	fresh lima beans	frozen lima beans;baby lima beans;green lima beans	vegetable	vegetable,green bean		vegan,vegetarian	44	113 6.84 0.86 0.198 0.000 0.050 0.419 20.17 1.48 - 4.9 0.0 0 8 467 34 3.14 0.0 70.24 1.89	- 156 usda/11031		usda/11031
F	pea shoots		vegetable	vegetable,green bean		vegan,vegetarian					
F	mushroom	button mushroom;white mushroom;closed-cup mushroom;cup mushroom;white button mushroom;fresh mushroom	vegetable	vegetable,mushroom		vegan,vegetarian	97	22 3.09 0.34 0.050 0.000 0.000 0.160 3.26 1.98 0.00 1.0 0.0 0 5 318 3 0.50 0.2 92.45 0.85	- 70 70 96 usda/11260;chopped 70 usda/11260;sliced 70 usda/11260;whole 96 usda/11260	slice/- 6 usda/11260;-/large 23 usda/11260;-/medium 18 usda/11260;-/small 10 usda/11260;-/- 10 83 96 usda/11260	usda/11260
F	chestnut mushroom	brown mushroom;cremini mushroom;crimini mushroom;cremini;baby bella mushroom	vegetable	vegetable,mushroom		vegan,vegetarian	97	22 2.50 0.10 0.014 0.000 0.002 0.042 4.30 1.72 - 0.6 - 0 6 448 18 0.40 0.1 92.12 0.98	- 72 79.5 87 usda/11266;sliced 72 usda/11266;whole 87 usda/11266	-/- 20 usda/11266	usda/11266
F	portobello mushroom	portobella mushroom;flat mushroom;field mushroom;portobello	vegetable	vegetable,mushroom		vegan,vegetarian	97	22 2.11 0.35 0.060 0.000 0.020 0.117 3.87 2.50 - 1.3 0.0 0 9 364 3 0.31 0.3 92.82 0.85	- 86 usda/11265;diced 86 usda/11265	-/- 84 usda/11265	usda/11265
F	shiitake mushroom	shiitake;fresh shiitake;fresh shiitake mushroom	vegetable	vegetable,mushroom		vegan,vegetarian	100	34 2.24 0.49 - 0.000 - - 6.79 2.38 - 2.5 - - 9 304 2 0.41 0.4 89.74 0.73		-/- 19 usda/11238	usda/11238
F	oyster mushroom		vegetable	vegetable,mushroom		vegan,vegetarian	89	33 3.31 0.41 0.062 0.000 0.031 0.123 6.09 1.11 0.00 2.3 0.0 0 18 420 3 1.33 0.7 89.18 1.01	- 86 usda/11987;sliced 86 usda/11987	-/large 148 usda/11987;-/small 15 usda/11987;-/- 15 81.5 148 usda/11987	usda/11987
F	king oyster mushroom	eryngii mushroom	vegetable	vegetable,mushroom		vegan,vegetarian	89	33 3.31 0.41 0.062 0.000 0.031 0.123 6.09 1.11 0.00 2.3 0.0 0 18 420 3 1.33 0.7 89.18 1.01	- 86 usda/11987;sliced 86 usda/11987	-/large 148 usda/11987;-/small 15 usda/11987;-/- 15 81.5 148 usda/11987	usda/11987/stand-in
F	chanterelle	chanterelle mushroom;girolle	vegetable	vegetable,mushroom		vegan,vegetarian	100	38 1.49 0.53 - 0.000 - - 6.86 1.16 - 3.8 - - 9 506 15 3.47 5.3 89.85 1.26	- 54 usda/11239	-/- 5.4 usda/11239	usda/11239
F	enoki mushroom	enoki	vegetable	vegetable,mushroom		vegan,vegetarian	84	37 2.66 0.29 0.020 0.000 0.000 0.090 7.81 0.22 0.00 2.7 0.0 0 3 359 0 1.15 0.1 88.34 0.91	- 64 64.5 65 usda/11950;sliced 65 usda/11950;whole 64 usda/11950	-/large 5 usda/11950;-/medium 3 usda/11950;-/- 3 3 5 usda/11950	usda/11950
F	maitake mushroom	hen of the woods;maitake	vegetable	vegetable,mushroom		vegan,vegetarian	100	31 1.94 0.19 0.030 0.000 0.030 0.090 6.97 2.07 0.00 2.7 0.0 0 1 204 1 0.30 28.1 90.37 0.53	- 70 usda/11993;diced 70 usda/11993	-/- 1.1 usda/11993	usda/11993
F	morel	morel mushroom;fresh morels	vegetable	vegetable,mushroom		vegan,vegetarian	100	31 3.12 0.57 0.065 0.000 0.052 0.433 5.10 0.60 - 2.8 - - 21 411 43 12.18 5.1 89.61 1.58	- 66 usda/11240	-/- 12.9 usda/11240	usda/11240
F	porcini	fresh porcini;cep;penny bun;porcini mushroom	vegetable	vegetable,mushroom		vegan,vegetarian	97	22 3.09 0.34 0.050 0.000 0.000 0.160 3.26 1.98 0.00 1.0 0.0 0 5 318 3 0.50 0.2 92.45 0.85		-/- 30 55 80 practice	usda/11260/stand-in
F	dried porcini	dried ceps;dried porcini mushrooms;dried wild mushrooms;dried mushrooms;dried mixed mushrooms	vegetable	vegetable,mushroom		vegan,vegetarian	100	296 9.58 0.99 0.225 0.000 0.317 0.151 75.37 2.21 - 11.5 0.0 0 13 1534 11 1.72 3.9 9.50 4.56	- 20 25 30 practice		usda/11268/stand-in
F	dried shiitake	dried shiitake mushrooms;dried black mushrooms;dried chinese mushrooms	vegetable	vegetable,mushroom		vegan,vegetarian	100	296 9.58 0.99 0.225 0.000 0.317 0.151 75.37 2.21 - 11.5 0.0 0 13 1534 11 1.72 3.9 9.50 4.56		-/- 3.6 3.675 3.75 usda/11268	usda/11268
F	wood ear mushrooms	dried wood ear;cloud ear fungus;black fungus;wood ear	vegetable	vegetable,mushroom		vegan,vegetarian	100	284 9.25 0.73 - 0.000 - - 73.01 - - 70.1 - 0 35 754 159 5.88 0.0 14.80 2.21	- 28 usda/11988	-/- 4.5 usda/11988	usda/11988
F	tinned mushrooms	canned mushrooms	vegetable	vegetable,mushroom		vegan,vegetarian	100	25 1.87 0.29 0.038 0.000 0.005 0.113 5.09 2.34 - 2.4 0.0 0 425 129 11 0.79 0.2 91.08 1.67	- 156 usda/11264;chopped 156 usda/11264	slice/- 4 usda/11264;-/large 16 usda/11264;-/medium 12 usda/11264;-/small 7 usda/11264;-/- 7 12 16 usda/11264	usda/11264
F	wild mushrooms	mixed wild mushrooms;mixed mushrooms;forest mushrooms	vegetable	vegetable,mushroom		vegan,vegetarian	97	22 3.09 0.34 0.050 0.000 0.000 0.160 3.26 1.98 0.00 1.0 0.0 0 5 318 3 0.50 0.2 92.45 0.85	- 70 70 96 usda/11260;chopped 70 usda/11260;sliced 70 usda/11260;whole 96 usda/11260	slice/- 6 usda/11260;-/large 23 usda/11260;-/medium 18 usda/11260;-/small 10 usda/11260;-/- 10 18 23 usda/11260	usda/11260/stand-in
F	truffle	black truffle;fresh truffle	vegetable	vegetable,mushroom		vegan,vegetarian					
F	tinned tomatoes	canned tomatoes;tinned plum tomatoes;whole canned tomatoes;canned whole tomatoes;tinned whole tomatoes;peeled plum tomatoes;whole peeled tomatoes;canned plum tomatoes;canned peeled tomatoes;whole tinned tomatoes;canned whole peeled tomatoes	vegetable	preserved vegetable		vegan,vegetarian	100	16 0.79 0.25 0.034 0.000 0.040 0.101 3.47 2.55 - 1.9 0.0 0 115 191 33 0.57 0.0 94.75 0.74	- 240 usda/11531	-/large 164 usda/11531;-/medium 111 usda/11531;-/small 82 usda/11531;-/- 82 111 164 usda/11531	usda/11531
F	tinned chopped tomatoes	chopped tomatoes;canned chopped tomatoes;canned diced tomatoes;diced tomatoes;tinned diced tomatoes;chopped tinned tomatoes;finely chopped tomatoes in juice	vegetable	preserved vegetable		vegan,vegetarian	100	16 0.79 0.25 0.034 0.000 0.040 0.101 3.47 2.55 - 1.9 0.0 0 115 191 33 0.57 0.0 94.75 0.74	- 240 usda/11531	-/large 164 usda/11531;-/medium 111 usda/11531;-/small 82 usda/11531;-/- 82 111 164 usda/11531	usda/11531/stand-in
F	crushed tomatoes	canned crushed tomatoes;tinned crushed tomatoes	vegetable	preserved vegetable		vegan,vegetarian	100	32 1.64 0.28 0.040 0.000 0.043 0.113 7.29 4.40 - 1.9 0.0 0 186 293 34 1.30 0.0 89.44 1.35	- 242 usda/11693		usda/11693
F	passata	sieved tomatoes;strained tomatoes;tomato passata	vegetable	preserved vegetable		vegan,vegetarian	100	38 1.65 0.21 0.029 0.000 0.031 0.086 8.98 4.83 - 1.9 0.0 0 28 439 18 1.78 0.0 87.88 1.28	- 250 usda/11547		usda/11547/stand-in
F	tomato paste	double-concentrate tomato purée;concentrated tomato purée;double concentrated tomato paste;double-concentrate tomato puree;concentrated tomato puree	vegetable	preserved vegetable		vegan,vegetarian	100	82 4.32 0.47 0.100 0.000 0.067 0.160 18.91 12.18 0.22 4.1 0.0 0 59 1014 36 2.98 0.0 73.50 2.80	- 256 262 264 usda/11546		usda/11546
F	tomato sauce	canned tomato sauce;plain tomato sauce	vegetable	preserved vegetable	?	vegan,vegetarian	100	24 1.20 0.30 0.041 0.000 0.045 0.121 5.31 3.56 - 1.5 0.0 0 474 297 14 0.96 0.0 91.28 1.92	- 245 usda/11549		usda/11549
F	pasta sauce	tomato pasta sauce;marinara sauce;marinara	vegetable	preserved vegetable	?		100	50 1.39 1.61 0.218 0.007 0.298 0.673 7.43 4.91 0.00 1.8 0.0 2 437 320 26 0.73 0.0 87.87 1.70			usda/06931
F	sun-dried tomatoes	sundried tomatoes;dry sun-dried tomatoes;dried tomatoes	vegetable	preserved vegetable		vegan,vegetarian	100	258 14.11 2.97 0.426 0.000 0.487 1.115 55.76 37.59 - 12.3 0.0 0 107 3427 110 9.09 0.0 14.56 12.60	- 54 usda/11955	-/- 2 usda/11955	usda/11955
F	sun-dried tomatoes in oil	oil-packed sun-dried tomatoes;sundried tomatoes in oil	vegetable	preserved vegetable		vegan,vegetarian	100	213 5.06 14.08 1.893 0.000 8.663 2.060 23.33 - - 5.8 - 0 266 1565 47 2.68 0.0 53.83 3.70	- 110 usda/11956	-/- 3 usda/11956	usda/11956
F	tomato powder		vegetable	preserved vegetable		vegan,vegetarian	100	302 12.91 0.44 0.062 0.000 0.066 0.179 74.68 43.90 - 16.5 0.0 0 134 1927 166 4.56 0.0 3.06 8.91			usda/11548
F	green olives	pitted green olives;stoned green olives;queen olives	vegetable,fruit	olive		vegan,vegetarian	100	145 1.03 15.32 2.029 0.000 11.314 1.307 3.84 0.54 - 3.3 0.0 0 1556 42 52 0.49 0.0 75.28 4.53		-/- 2.7 usda/09195	usda/09195
F	black olives	ripe olives;pitted black olives;stoned black olives;kalamata olives;tinned black olives	vegetable,fruit	olive		vegan,vegetarian	100	115 0.84 10.68 1.415 0.000 7.888 0.911 6.26 0.00 - 3.2 0.0 0 735 8 88 3.30 0.0 79.99 2.23	- 134.4 usda/09193	-/large 4.4 usda/09193;-/small 3.2 usda/09193;-/- 3.2 3.8 4.4 usda/09193	usda/09193
F	capers	capers in brine;nonpareil capers;baby capers;salted capers	vegetable	preserved vegetable		vegan,vegetarian	100	23 2.36 0.86 0.233 0.000 0.063 0.304 4.89 0.41 - 3.2 0.0 0 2348 40 40 1.67 0.0 83.85 8.04	- 137.6 usda/02054		usda/02054
F	caperberries		vegetable	preserved vegetable		vegan,vegetarian					
F	gherkins	cornichons;pickles;pickled gherkins;sour gherkins;dill pickles;pickled cucumbers	vegetable	pickle	?	vegan,vegetarian	100	12 0.50 0.30 0.079 0.000 0.005 0.122 2.41 1.07 - 1.0 0.0 0 809 117 57 0.26 0.0 94.34 2.45	- 155 usda/11937;chopped 143 usda/11937;diced 143 usda/11937	slice/- 7 usda/11937;spear/small 35 usda/11937;spear/- 35 usda/11937;-/large 135 usda/11937;-/- 135 usda/11937	usda/11937
F	sweet pickles	bread and butter pickles;sweet gherkins	vegetable	pickle	?	vegan,vegetarian	100	91 0.58 0.41 0.067 0.000 0.004 0.106 21.15 18.27 - 1.0 0.0 0 457 100 61 0.25 0.0 76.20 1.65	- 153 156.5 160 usda/11940;chopped 160 usda/11940;sliced 153 usda/11940	-/large 35 usda/11940;-/small 15 usda/11940;-/- 15 25 35 usda/11940	usda/11940
F	pickled onions	pickled silverskin onions	vegetable	pickle	?	vegan,vegetarian					
F	pickled ginger	sushi ginger;gari ginger	vegetable	preserved vegetable		vegan,vegetarian					
F	pickle relish	sweet pickle relish;relish	vegetable	pickle	?	vegan,vegetarian	100	130 0.37 0.47 0.054 0.000 0.209 0.122 35.06 29.13 - 1.1 0.0 0 811 25 3 0.87 0.0 62.07 2.03	- 240 242.5 245 usda/11945	packet/- 10 usda/11945	usda/11945
F	dried onion	onion flakes;dried onion flakes;dehydrated onion;dried minced onion	vegetable	preserved vegetable		vegan,vegetarian	100	349 8.95 0.46 0.078 0.000 0.064 0.180 83.28 37.41 - 9.2 0.0 0 21 1622 257 1.55 0.0 3.93 3.38	- 56 68 80 usda/11284		usda/11284
F	crispy onions	fried onions;crispy fried onions;crispy fried shallots	vegetable	preserved vegetable	?						
F	mixed vegetables	frozen mixed vegetables	vegetable	preserved vegetable		vegan,vegetarian	100	72 3.33 0.52 0.098 0.000 0.031 0.235 13.47 - - 4.0 0.0 0 47 212 25 0.95 0.0 82.08 0.60			usda/11583
F	nori	nori sheets;toasted nori;laver;sheet of nori=sheet;nori seaweed	vegetable	seaweed		vegan,vegetarian				sheet/- 2.5 2.75 3 practice	
F	kombu	kelp;dried kombu;dried kelp	vegetable	seaweed		vegan,vegetarian					
F	wakame	dried wakame	vegetable	seaweed		vegan,vegetarian					
F	dulse	dried dulse	vegetable	seaweed		vegan,vegetarian					
F	agar	agar agar;agar-agar powder;agar powder;agar flakes		gelling agent		vegan,vegetarian	100	306 6.21 0.30 0.061 0.000 0.027 0.102 80.88 2.97 - 7.7 0.0 0 102 1125 625 21.40 0.0 8.68 3.93	- 96 120 144 practice		usda/11663
F	carrageenan	irish moss;carrageen		gelling agent		vegan,vegetarian	100	49 1.51 0.16 0.033 0.000 0.015 0.055 12.29 0.61 - 1.3 0.0 0 67 63 72 8.90 0.0 81.34 4.70	- 80 usda/11444		usda/11444
F	spirulina	spirulina powder		seaweed		vegan,vegetarian	100	290 57.47 7.72 2.650 0.000 0.675 2.080 23.90 3.10 - 3.6 0.0 0 1048 1363 120 28.50 0.0 4.68 6.23	- 112 usda/11667		usda/11667
F	parsley	fresh parsley;flat-leaf parsley;curly parsley;italian parsley;fresh flat-leaf parsley;flat parsley;parsley leaves=leaf;curly-leaf parsley;flat-leafed parsley	spice	fresh herb		fresh-herb,vegan,vegetarian	95	36 2.97 0.79 0.132 0.000 0.295 0.124 6.33 0.85 - 3.3 0.0 0 56 554 138 6.20 0.0 87.71 2.20	- 60 60.4 60.8 usda/11297;chopped 60 usda/11297	sprig/- 1 usda/11297	usda/11297
F	coriander leaves	fresh coriander;cilantro;fresh cilantro;cilantro leaf;leaf coriander	spice	fresh herb		fresh-herb,vegan,vegetarian	85	23 2.13 0.52 0.014 0.000 0.275 0.040 3.67 0.87 - 2.8 0.0 0 46 521 67 1.77 0.0 92.21 1.47	- 16 usda/11165	sprig/- 20/9 usda/11165	usda/11165
F	basil	fresh basil;basil leaf=leaf;sweet basil;fresh basil leaf=leaf;thai basil;genovese basil	spice	fresh herb		fresh-herb,vegan,vegetarian	64	23 3.15 0.64 0.041 0.000 0.088 0.389 2.65 0.30 - 1.6 0.0 0 4 295 177 3.17 0.0 92.06 1.49	- 24 usda/02044;chopped 42.4 usda/02044;leaves 24 usda/02044	leaf/- 0.5 usda/02044,practice	usda/02044
F	mint	fresh mint;mint leaf=leaf;fresh mint leaf=leaf;spearmint;garden mint;fresh spearmint	spice	fresh herb		fresh-herb,vegan,vegetarian	41	44 3.29 0.73 0.191 0.000 0.025 0.394 8.41 - - 6.8 - 0 30 458 199 11.87 0.0 85.55 2.03	- 91.2 usda/02065	leaf/- 0.1 0.125 0.15 usda/02065,practice;sprig/- 1 1.5 2 practice	usda/02065
F	peppermint	fresh peppermint	spice	fresh herb		fresh-herb,vegan,vegetarian	61	70 3.75 0.94 0.246 0.000 0.033 0.508 14.89 - - 8.0 - 0 31 569 243 5.08 0.0 78.65 1.76	- 25.6 usda/02064	leaf/- 0.05 usda/02064	usda/02064
F	dill	fresh dill;dill fronds;dill weed;dillweed;fresh dill weed	spice	fresh herb		fresh-herb,vegan,vegetarian	59	43 3.46 1.12 0.060 0.000 0.802 0.095 7.02 - - 2.1 - 0 61 738 208 6.59 0.0 85.95 2.45	- 8.9 usda/02045;sprigs 8.9 usda/02045	sprig/- 0.2 0.5 1 usda/02045,practice	usda/02045
F	rosemary	fresh rosemary;rosemary leaf=leaf;rosemary needles;fresh rosemary leaves=leaf	spice	fresh herb		fresh-herb,vegan,vegetarian	65	131 3.31 5.86 2.838 0.000 1.160 0.901 20.70 - - 14.1 - 0 26 668 317 6.65 0.0 67.77 2.35	- 27.2 30.4 33.6 usda/02063	sprig/- 1 2 3 practice	usda/02063
F	thyme	fresh thyme;thyme leaf=leaf;fresh thyme leaves=leaf;lemon thyme;garden thyme	spice	fresh herb		fresh-herb,vegan,vegetarian	68	101 5.56 1.68 0.467 0.000 0.081 0.532 24.45 - - 14.0 - 0 9 609 405 17.45 0.0 65.11 3.20	- 38.4 usda/02049	sprig/- 0.5 0.75 1 practice	usda/02049
F	sage	fresh sage;sage leaf=leaf;fresh sage leaf=leaf	spice	fresh herb		fresh-herb,vegan,vegetarian	68	101 5.56 1.68 0.467 0.000 0.081 0.532 24.45 - - 14.0 - 0 9 609 405 17.45 0.0 65.11 3.20	- 25 32.5 40 practice;chopped 25 32.5 40 practice	leaf/- 0.3 0.5 0.7 practice	usda/02049/stand-in
F	fresh oregano	oregano leaves;fresh oregano leaves	spice	fresh herb		fresh-herb,vegan,vegetarian	68	101 5.56 1.68 0.467 0.000 0.081 0.532 24.45 - - 14.0 - 0 9 609 405 17.45 0.0 65.11 3.20		sprig/- 0.5 0.75 1 practice	usda/02049/stand-in
F	fresh marjoram	marjoram leaves;sweet marjoram	spice	fresh herb		fresh-herb,vegan,vegetarian	68	101 5.56 1.68 0.467 0.000 0.081 0.532 24.45 - - 14.0 - 0 9 609 405 17.45 0.0 65.11 3.20		sprig/- 0.5 0.75 1 practice	usda/02049/stand-in
F	tarragon	fresh tarragon;french tarragon;tarragon leaf=leaf;fresh tarragon leaves	spice	fresh herb		fresh-herb,vegan,vegetarian	95	36 2.97 0.79 0.132 0.000 0.295 0.124 6.33 0.85 - 3.3 0.0 0 56 554 138 6.20 0.0 87.71 2.20	- 25 37.5 50 practice;chopped 25 37.5 50 practice	sprig/- 0.5 0.75 1 practice	usda/11297/stand-in
F	chervil	fresh chervil	spice	fresh herb		fresh-herb,vegan,vegetarian	95	36 2.97 0.79 0.132 0.000 0.295 0.124 6.33 0.85 - 3.3 0.0 0 56 554 138 6.20 0.0 87.71 2.20			usda/11297/stand-in
F	fresh bay leaf	fresh bay leaves=leaf;fresh bay	spice	fresh herb		fresh-herb,vegan,vegetarian	65	131 3.31 5.86 2.838 0.000 1.160 0.901 20.70 - - 14.1 - 0 26 668 317 6.65 0.0 67.77 2.35		leaf/- 0.3 0.45 0.6 practice;-/- 0.3 0.45 0.6 practice	usda/02063/stand-in
F	lovage	fresh lovage	spice	fresh herb		fresh-herb,vegan,vegetarian	95	36 2.97 0.79 0.132 0.000 0.295 0.124 6.33 0.85 - 3.3 0.0 0 56 554 138 6.20 0.0 87.71 2.20			usda/11297/stand-in
F	borage		spice	fresh herb		fresh-herb,vegan,vegetarian	80	21 1.80 0.70 0.170 0.000 0.211 0.109 3.06 - - - - 0 80 470 93 3.30 0.0 93.00 1.44	- 89 usda/11613		usda/11613
F	summer savory	fresh savory	spice	fresh herb		fresh-herb,vegan,vegetarian	68	101 5.56 1.68 0.467 0.000 0.081 0.532 24.45 - - 14.0 - 0 9 609 405 17.45 0.0 65.11 3.20			usda/02049/stand-in
F	lemon balm		spice	fresh herb		fresh-herb,vegan,vegetarian	41	44 3.29 0.73 0.191 0.000 0.025 0.394 8.41 - - 6.8 - 0 30 458 199 11.87 0.0 85.55 2.03			usda/02065/stand-in
F	lemon verbena	verbena	spice	fresh herb		fresh-herb,vegan,vegetarian	41	44 3.29 0.73 0.191 0.000 0.025 0.394 8.41 - - 6.8 - 0 30 458 199 11.87 0.0 85.55 2.03			usda/02065/stand-in
F	lemongrass	lemon grass;lemongrass stalk=stalk;stalk lemongrass=stalk;fresh lemongrass;stick lemongrass=stalk	spice	fresh herb		fresh-herb,vegan,vegetarian	65	99 1.82 0.49 0.119 0.000 0.054 0.170 25.31 - - - 0.0 0 6 723 65 8.17 0.0 70.58 1.80	- 67 71.9 76.8 usda/11972	stalk/- 10 17.5 25 practice;-/- 10 17.5 25 practice	usda/11972
F	curry leaves	fresh curry leaves	spice	fresh herb		fresh-herb,vegan,vegetarian	65	131 3.31 5.86 2.838 0.000 1.160 0.901 20.70 - - 14.1 - 0 26 668 317 6.65 0.0 67.77 2.35		-/- 0.05 0.1 0.15 practice	usda/02063/stand-in
F	kaffir lime leaves	makrut lime leaves;lime leaves	spice	fresh herb		fresh-herb,vegan,vegetarian	65	131 3.31 5.86 2.838 0.000 1.160 0.901 20.70 - - 14.1 - 0 26 668 317 6.65 0.0 67.77 2.35		-/- 0.3 0.45 0.6 practice	usda/02063/stand-in
F	epazote		spice	fresh herb		fresh-herb,vegan,vegetarian	100	32 0.33 0.52 - 0.000 - - 7.44 - - 3.8 0.0 0 43 633 275 1.88 0.0 89.21 2.50	- 12.8 usda/11984	sprig/- 2 usda/11984	usda/11984
F	hyssop		spice	fresh herb		fresh-herb,vegan,vegetarian	68	101 5.56 1.68 0.467 0.000 0.081 0.532 24.45 - - 14.0 - 0 9 609 405 17.45 0.0 65.11 3.20			usda/02049/stand-in
F	elderflowers	elderflower heads;fresh elderflowers	spice	flower		vegan,vegetarian					
F	edible flowers		spice	flower		vegan,vegetarian					
F	rose petals	dried rose petals	spice	flower		vegan,vegetarian					
F	lavender	dried lavender;lavender flowers;culinary lavender	spice	flower		vegan,vegetarian					
F	mixed fresh herbs	fresh mixed herbs;soft herbs	spice	fresh herb		fresh-herb,vegan,vegetarian	95	36 2.97 0.79 0.132 0.000 0.295 0.124 6.33 0.85 - 3.3 0.0 0 56 554 138 6.20 0.0 87.71 2.20	- 25 42.5 60 practice;chopped 25 42.5 60 practice		usda/11297/stand-in
F	bouquet garni		spice	fresh herb		fresh-herb,vegan,vegetarian	95	36 2.97 0.79 0.132 0.000 0.295 0.124 6.33 0.85 - 3.3 0.0 0 56 554 138 6.20 0.0 87.71 2.20		-/- 5 10 15 practice	usda/11297/stand-in
F	ginger	fresh ginger;root ginger;ginger root;fresh root ginger;fresh ginger root;stem of ginger;piece of ginger;grated ginger;green ginger;thumb of ginger	spice	root spice		vegan,vegetarian	93	80 1.82 0.75 0.203 0.000 0.154 0.154 17.77 1.70 - 2.0 0.0 0 13 415 16 0.60 0.0 78.89 0.77	- 96 usda/11216;sliced 96 usda/11216	slice/- 2.2 usda/11216;thumb/- 15 22.5 30 practice;-/- 10 20 30 practice	usda/11216
F	ginger paste	ginger purée;ginger puree	spice	root spice	?	vegan,vegetarian			- 224 248 272 practice		
F	fresh turmeric	turmeric root;fresh turmeric root	spice	root spice		vegan,vegetarian	93	80 1.82 0.75 0.203 0.000 0.154 0.154 17.77 1.70 - 2.0 0.0 0 13 415 16 0.60 0.0 78.89 0.77	- 96 usda/11216;sliced 96 usda/11216	slice/- 2.2 usda/11216	usda/11216/stand-in
F	galangal	fresh galangal	spice	root spice		vegan,vegetarian	93	80 1.82 0.75 0.203 0.000 0.154 0.154 17.77 1.70 - 2.0 0.0 0 13 415 16 0.60 0.0 78.89 0.77	- 96 usda/11216;sliced 96 usda/11216	slice/- 2.2 usda/11216	usda/11216/stand-in
F	wasabi root	fresh wasabi	spice	root spice		vegan,vegetarian	77	109 4.80 0.63 - 0.000 - - 23.54 - - 7.8 - 0 17 568 128 1.03 0.0 69.11 1.92	- 130 usda/11990;sliced 130 usda/11990	-/- 169 usda/11990	usda/11990
F	fine salt	salt;table salt;cooking salt;fine table salt;iodised salt;iodized salt;free-flowing salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 288 288 340.32 usda/02047,mill,bba		usda/02047
F	fine sea salt	fine-grained sea salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 288 288 292 usda/02047		usda/02047/stand-in
F	sea salt	unrefined sea salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 192 226.56 288 bba,practice		usda/02047/stand-in
F	flaky sea salt	sea salt flakes;flaked sea salt;flake salt;flaky salt;sea salt crystals	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 115.2 153.6 192 practice		usda/02047/stand-in
F	coarse salt	coarse sea salt;rock salt;preserving salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 192 240 288 practice		usda/02047/stand-in
F	kosher salt	coarse kosher salt;koshering salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 128 194.4 256 mill,bba		usda/02047/stand-in
F	pickling salt	canning salt;fine pickling salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 288 288 292 usda/02047		usda/02047/stand-in
F	pink salt	himalayan salt;fine pink salt;himalayan pink salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 240 264 288 practice		usda/02047/stand-in
F	smoked salt	smoked sea salt	salt	salt		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 192 240 288 practice		usda/02047/stand-in
F	low-sodium salt	reduced-sodium salt	salt	salt		vegan,vegetarian			- 240 264 288 practice		
F	celery salt		salt,spice	salt	celery	vegan,vegetarian			- 216 252 288 practice		
F	garlic salt		salt,spice	salt		vegan,vegetarian			- 216 252 288 practice		
F	curing salt	pink curing salt;nitrite curing salt;prague powder;cure no. 1;curing salt no. 1;curing salt no. 2;nitrate curing salt;saltpetre;bacon cure	salt	salt		curing-salt,vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 38758 8 24 0.33 0.0 0.20 99.80	- 240 264 288 practice		usda/02047/stand-in
F	monosodium glutamate	MSG	spice	salt		vegan,vegetarian			- 192 216 240 practice		
F	black pepper	ground black pepper;freshly ground black pepper;black peppercorns;whole black peppercorns;peppercorns;cracked black pepper;coarse black pepper;cracked pepper;freshly cracked black pepper	spice	spice		vegan,vegetarian	100	251 10.39 3.26 1.392 0.000 0.739 0.998 63.95 0.64 - 25.3 0.0 0 20 1329 443 9.71 0.0 12.46 4.49	- 110.4 110.4 139.2 usda/02030;ground 110.4 usda/02030;whole 139.2 usda/02030		usda/02030
F	white pepper	ground white pepper;white peppercorns;freshly ground white pepper	spice	spice		vegan,vegetarian	100	296 10.40 2.12 0.626 0.000 0.789 0.616 68.61 - - 26.2 0.0 0 5 73 265 14.31 0.0 11.42 1.59	- 113.6 114.4 115.2 usda/02032;ground 113.6 114.4 115.2 usda/02032		usda/02032
F	green peppercorns	green peppercorns in brine	spice	spice		vegan,vegetarian			- 72 108 144 practice		
F	pink peppercorns		spice	spice		vegan,vegetarian	100	251 10.39 3.26 1.392 0.000 0.739 0.998 63.95 0.64 - 25.3 0.0 0 20 1329 443 9.71 0.0 12.46 4.49	- 110.4 110.4 139.2 usda/02030;ground 110.4 usda/02030;whole 139.2 usda/02030		usda/02030/stand-in
F	Sichuan pepper	sichuan peppercorns;szechuan peppercorns;szechuan pepper	spice	spice		vegan,vegetarian	100	251 10.39 3.26 1.392 0.000 0.739 0.998 63.95 0.64 - 25.3 0.0 0 20 1329 443 9.71 0.0 12.46 4.49	- 110.4 110.4 139.2 usda/02030;ground 110.4 usda/02030;whole 139.2 usda/02030		usda/02030/stand-in
F	mixed peppercorns		spice	spice		vegan,vegetarian	100	251 10.39 3.26 1.392 0.000 0.739 0.998 63.95 0.64 - 25.3 0.0 0 20 1329 443 9.71 0.0 12.46 4.49	- 110.4 110.4 139.2 usda/02030;ground 110.4 usda/02030;whole 139.2 usda/02030		usda/02030/stand-in
F	ground cinnamon	cinnamon;cinnamon powder;powdered cinnamon;ceylon cinnamon;cassia;ground cassia	spice	spice		vegan,vegetarian	100	247 3.99 1.24 0.345 0.000 0.246 0.068 80.59 2.17 - 53.1 0.0 0 10 431 1002 8.32 0.0 10.58 3.60	- 124.8 usda/02010		usda/02010
F	cinnamon stick	stick cinnamon;cinnamon bark;cassia bark;stick of cinnamon;cinnamon quill	spice	spice		vegan,vegetarian	100	247 3.99 1.24 0.345 0.000 0.246 0.068 80.59 2.17 - 53.1 0.0 0 10 431 1002 8.32 0.0 10.58 3.60		-/- 2.5 4.25 6 practice	usda/02010/stand-in
F	nutmeg	ground nutmeg;whole nutmeg;grated nutmeg;freshly grated nutmeg;freshly ground nutmeg	spice	spice		vegan,vegetarian	100	525 5.84 36.31 25.940 - 3.220 0.350 49.29 2.99 - 20.8 0.0 0 16 350 184 3.04 0.0 6.23 2.34	- 105.6 108.8 112 usda/02025	-/- 5 6 7 practice	usda/02025
F	mace	ground mace;blade of mace=blade;mace blade=blade;blade mace=blade	spice	spice		vegan,vegetarian	100	475 6.71 32.38 9.510 - 11.170 4.390 50.50 - - 20.2 0.0 0 80 463 252 13.90 0.0 8.17 2.23	- 81.6 83.2 84.8 usda/02022	blade/- 0.3 0.5 0.7 practice	usda/02022
F	cloves	whole cloves;ground cloves	spice	spice		vegan,vegetarian	100	274 5.97 13.00 3.952 0.254 1.393 3.606 65.53 2.38 - 33.9 0.0 0 277 1020 632 11.83 0.0 9.87 5.63	- 100.8 102.4 104 usda/02011	-/- 0.07 0.085 0.1 practice	usda/02011
F	allspice	ground allspice;allspice berries;whole allspice;pimento berries;jamaica pepper	spice	spice		vegan,vegetarian	100	263 6.09 8.69 2.550 0.000 0.660 2.360 72.12 - - 21.6 0.0 0 77 1044 661 7.06 0.0 8.46 4.65	- 91.2 93.6 96 usda/02001	-/- 0.08 0.1 0.12 practice	usda/02001
F	cardamom	green cardamom;ground cardamom;cardamom seed;cardamom powder;cardamom pod=pod;green cardamom pod=pod;pod of cardamom=pod	spice	spice		vegan,vegetarian	100	311 10.76 6.70 0.680 0.000 0.870 0.430 68.47 - - 28.0 - 0 18 1119 383 13.97 0.0 8.28 5.78	- 92.8 94.4 96 usda/02006;ground 92.8 94.4 96 usda/02006	pod/- 0.15 0.225 0.3 practice;-/- 0.15 0.225 0.3 practice	usda/02006
F	black cardamom	black cardamom pods	spice	spice		vegan,vegetarian	100	311 10.76 6.70 0.680 0.000 0.870 0.430 68.47 - - 28.0 - 0 18 1119 383 13.97 0.0 8.28 5.78	- 92.8 94.4 96 usda/02006;ground 92.8 94.4 96 usda/02006		usda/02006/stand-in
F	ground ginger	ginger powder;dried ginger;powdered ginger;dry ginger	spice	spice		vegan,vegetarian	100	335 8.98 4.24 2.599 0.000 0.479 0.929 71.62 3.39 - 14.1 0.0 0 27 1320 114 19.80 0.0 9.94 5.22	- 83.2 84.8 86.4 usda/02021		usda/02021
F	cumin	cumin seeds;ground cumin;whole cumin;cumin powder;roasted cumin seeds;toasted cumin seeds	spice	spice		vegan,vegetarian	100	375 17.81 22.27 1.535 - 14.040 3.279 44.24 2.25 - 10.5 0.0 0 168 1788 931 66.36 0.0 8.06 7.62	- 96 98.4 100.8 usda/02014;whole 96 98.4 100.8 usda/02014		usda/02014
F	coriander seed	ground coriander;coriander powder;whole coriander seeds;dried coriander seeds	spice	spice		vegan,vegetarian	100	298 12.37 17.77 0.990 - 13.580 1.750 54.99 - - 41.9 - 0 35 1267 709 16.32 0.0 8.86 6.02	- 80 83.2 86.4 usda/02013		usda/02013
F	dried coriander leaf		spice	spice		vegan,vegetarian	100	279 21.93 4.78 0.115 0.000 2.232 0.328 52.10 7.27 - 10.4 0.0 0 211 4466 1246 42.46 0.0 7.30 14.08	- 28.8 usda/02012		usda/02012
F	turmeric	ground turmeric;turmeric powder;dried turmeric	spice	spice		vegan,vegetarian	100	312 9.68 3.25 1.838 0.056 0.449 0.756 67.14 3.21 - 22.7 0.0 0 27 2080 168 55.00 0.0 12.85 7.08	- 144 147.2 150.4 usda/02043		usda/02043
F	paprika	sweet paprika;ground paprika;hungarian paprika;mild paprika;hot paprika;unsmoked paprika	spice	spice		vegan,vegetarian	100	282 14.14 12.89 2.140 0.000 1.695 7.766 53.99 10.34 - 34.9 0.0 0 68 2280 229 21.14 0.0 11.24 7.74	- 108.8 109.6 110.4 usda/02028		usda/02028
F	smoked paprika	sweet smoked paprika;hot smoked paprika;pimentón;spanish smoked paprika	spice	spice		vegan,vegetarian	100	282 14.14 12.89 2.140 0.000 1.695 7.766 53.99 10.34 - 34.9 0.0 0 68 2280 229 21.14 0.0 11.24 7.74	- 108.8 109.6 110.4 usda/02028		usda/02028/stand-in
F	cayenne pepper	cayenne;ground cayenne;ground cayenne pepper	spice	spice		vegan,vegetarian	100	318 12.01 17.27 3.260 - 2.750 8.370 56.63 10.34 - 27.2 0.0 0 30 2014 148 7.80 0.0 8.05 6.04	- 84.8 85.6 86.4 usda/02031		usda/02031
F	chilli flakes	dried chilli flakes;crushed red pepper;red pepper flakes;chili flakes;crushed chilli flakes;crushed red pepper flakes;crushed chillies;red chilli flakes;dried red pepper flakes;hot pepper flakes;hot red pepper flakes	spice	spice		vegan,vegetarian	100	318 12.01 17.27 3.260 - 2.750 8.370 56.63 10.34 - 27.2 0.0 0 30 2014 148 7.80 0.0 8.05 6.04	- 72 85.6 96 usda/02031,practice		usda/02031/stand-in
F	aleppo pepper	pul biber;turkish chilli flakes;urfa chilli flakes;aleppo chilli flakes	spice	spice		vegan,vegetarian	100	318 12.01 17.27 3.260 - 2.750 8.370 56.63 10.34 - 27.2 0.0 0 30 2014 148 7.80 0.0 8.05 6.04	- 84.8 85.6 86.4 usda/02031		usda/02031/stand-in
F	chilli powder	hot chilli powder;mild chilli powder;ground chilli;kashmiri chilli powder;ground red chilli;red chilli powder	spice	spice		vegan,vegetarian	100	318 12.01 17.27 3.260 - 2.750 8.370 56.63 10.34 - 27.2 0.0 0 30 2014 148 7.80 0.0 8.05 6.04	- 84.8 85.6 86.4 usda/02031		usda/02031/stand-in
F	chili seasoning	chili powder blend;american chili powder;chili powder mix	spice	spice	?		100	282 13.46 14.28 2.462 0.000 3.211 8.006 49.70 7.19 - 34.8 0.0 0 2867 1950 330 17.30 0.0 10.75 11.81	- 128 128.8 129.6 usda/02009		usda/02009
F	korean chilli flakes	gochugaru;korean chili flakes	spice	spice		vegan,vegetarian	100	282 14.14 12.89 2.140 0.000 1.695 7.766 53.99 10.34 - 34.9 0.0 0 68 2280 229 21.14 0.0 11.24 7.74	- 108.8 109.6 110.4 usda/02028		usda/02028/stand-in
F	curry powder	mild curry powder;medium curry powder;hot curry powder;madras curry powder	spice	spice	?	vegan,vegetarian	100	325 14.29 14.01 1.648 0.000 8.782 3.056 55.83 2.76 - 53.2 0.0 0 52 1170 525 19.10 0.0 8.80 7.07	- 96 98.4 100.8 usda/02015		usda/02015
F	garam masala		spice	spice	?	vegan,vegetarian	100	325 14.29 14.01 1.648 0.000 8.782 3.056 55.83 2.76 - 53.2 0.0 0 52 1170 525 19.10 0.0 8.80 7.07	- 96 98.4 100.8 usda/02015		usda/02015/stand-in
F	mixed spice	pudding spice	spice	spice		vegan,vegetarian	100	342 5.76 12.60 6.530 - 1.102 0.780 69.28 7.76 - 14.8 0.0 0 52 663 682 19.71 0.0 8.46 3.90	- 81.6 85.6 89.6 usda/02035		usda/02035/stand-in
F	pumpkin pie spice	pumpkin spice;apple pie spice	spice	spice		vegan,vegetarian	100	342 5.76 12.60 6.530 - 1.102 0.780 69.28 7.76 - 14.8 0.0 0 52 663 682 19.71 0.0 8.46 3.90	- 81.6 85.6 89.6 usda/02035		usda/02035
F	speculaas spice	gingerbread spice;lebkuchen spice	spice	spice		vegan,vegetarian	100	342 5.76 12.60 6.530 - 1.102 0.780 69.28 7.76 - 14.8 0.0 0 52 663 682 19.71 0.0 8.46 3.90	- 81.6 85.6 89.6 usda/02035		usda/02035/stand-in
F	chinese five-spice powder	five-spice powder;five spice;chinese five spice	spice	spice		vegan,vegetarian	100	342 5.76 12.60 6.530 - 1.102 0.780 69.28 7.76 - 14.8 0.0 0 52 663 682 19.71 0.0 8.46 3.90	- 81.6 85.6 89.6 usda/02035		usda/02035/stand-in
F	quatre épices	four-spice mix	spice	spice		vegan,vegetarian	100	263 6.09 8.69 2.550 0.000 0.660 2.360 72.12 - - 21.6 0.0 0 77 1044 661 7.06 0.0 8.46 4.65	- 91.2 93.6 96 usda/02001		usda/02001/stand-in
F	ras el hanout		spice	spice	?	vegan,vegetarian			- 72 108 144 practice		
F	za'atar		spice	spice	?sesame	vegan,vegetarian			- 72 108 144 practice		
F	dukkah		spice	spice	?	vegan,vegetarian			- 72 108 144 practice		
F	sumac	ground sumac	spice	spice		vegan,vegetarian			- 72 108 144 practice		
F	baharat		spice	spice	?	vegan,vegetarian			- 72 108 144 practice		
F	berbere	berbere spice	spice	spice	?	vegan,vegetarian			- 72 108 144 practice		
F	jerk seasoning	jerk spice	spice	spice	?	vegan,vegetarian			- 72 108 144 practice		
F	cajun seasoning	cajun spice;creole seasoning	spice	spice	?	vegan,vegetarian			- 72 108 144 practice		
F	taco seasoning	fajita seasoning	spice	spice	?	vegan,vegetarian	100	322 4.50 0.00 0.000 0.000 - - 58.00 10.83 - 13.3 - 0 7203 1000 0 7.20 - 5.70 31.80	- 136.8 usda/02075		usda/02075
F	poultry seasoning		spice	spice	?	vegan,vegetarian	100	307 9.59 7.53 3.290 0.000 1.206 1.936 65.59 1.80 - 11.3 0.0 0 27 684 996 35.30 0.0 9.31 5.92	- 70.4 71.2 72 usda/02034		usda/02034
F	pickling spice		spice	spice	?mustard	vegan,vegetarian			- 72 108 144 practice		
F	fennel seeds	ground fennel;ground fennel seeds;whole fennel seeds	spice	spice		vegan,vegetarian	100	345 15.80 14.87 0.480 - 9.910 1.690 52.29 - - 39.8 - 0 88 1694 1196 18.54 0.0 8.81 8.22	- 92.8 94.4 96 usda/02018;whole 92.8 94.4 96 usda/02018		usda/02018
F	caraway seeds	caraway;ground caraway;whole caraway seeds	spice	spice		vegan,vegetarian	100	333 19.77 14.59 0.620 - 7.125 3.272 49.90 0.64 - 38.0 0.0 0 17 1351 689 16.23 0.0 9.87 5.87	- 100.8 104 107.2 usda/02005		usda/02005
F	aniseed	anise seed;anise;ground anise;ground aniseed	spice	spice		vegan,vegetarian	100	337 17.60 15.90 0.586 - 9.780 3.150 50.02 - - 14.6 0.0 0 16 1441 646 36.96 0.0 9.54 6.95	- 100.8 104 107.2 usda/02002;whole 100.8 104 107.2 usda/02002		usda/02002
F	star anise	whole star anise;ground star anise	spice	spice		vegan,vegetarian	100	337 17.60 15.90 0.586 - 9.780 3.150 50.02 - - 14.6 0.0 0 16 1441 646 36.96 0.0 9.54 6.95		-/- 0.7 1.1 1.5 practice	usda/02002/stand-in
F	dill seed		spice	spice		vegan,vegetarian	100	305 15.98 14.54 0.730 - 9.410 1.010 55.17 - - 21.1 0.0 0 20 1186 1516 16.33 0.0 7.70 6.62	- 100.8 103.2 105.6 usda/02016		usda/02016
F	celery seed		spice	spice	celery	vegan,vegetarian	100	392 18.07 25.27 2.190 - 15.930 3.720 41.35 0.67 - 11.8 0.0 0 160 1400 1767 44.90 0.0 6.04 9.27	- 96 100 104 usda/02007		usda/02007
F	fenugreek seeds	fenugreek;ground fenugreek	spice	spice		vegan,vegetarian	100	323 23.00 6.41 1.460 0.000 - - 58.35 - - 24.6 - 0 67 770 176 33.53 0.0 8.84 3.40	- 177.6 usda/02019		usda/02019
F	fenugreek leaves	dried fenugreek leaves;kasuri methi;methi	spice	spice		vegan,vegetarian			- 72 108 144 practice		
F	nigella seeds	black onion seeds;kalonji;nigella;black cumin seeds	spice	spice		vegan,vegetarian	100	375 17.81 22.27 1.535 - 14.040 3.279 44.24 2.25 - 10.5 0.0 0 168 1788 931 66.36 0.0 8.06 7.62	- 96 98.4 100.8 usda/02014;whole 96 98.4 100.8 usda/02014		usda/02014/stand-in
F	ajwain	carom seeds;ajwain seeds	spice	spice		vegan,vegetarian	100	375 17.81 22.27 1.535 - 14.040 3.279 44.24 2.25 - 10.5 0.0 0 168 1788 931 66.36 0.0 8.06 7.62	- 96 98.4 100.8 usda/02014;whole 96 98.4 100.8 usda/02014		usda/02014/stand-in
F	mustard seeds	yellow mustard seeds;black mustard seeds;brown mustard seeds;white mustard seeds;whole mustard seeds	spice	spice	mustard	vegan,vegetarian	100	508 26.08 36.24 1.989 0.000 22.518 10.088 28.09 6.79 - 12.2 0.0 0 13 738 266 9.21 0.0 5.27 4.33	- 144 168 192 practice		usda/02024/stand-in
F	mustard powder	dry mustard;english mustard powder;ground mustard;ground mustard seed;dry mustard powder	spice	spice	mustard	vegan,vegetarian	100	508 26.08 36.24 1.989 0.000 22.518 10.088 28.09 6.79 - 12.2 0.0 0 13 738 266 9.21 0.0 5.27 4.33	- 96 98.4 100.8 usda/02024		usda/02024
F	annatto	annatto seeds;achiote;achiote seeds;ground annatto	spice	spice		vegan,vegetarian			- 72 108 144 practice		
F	asafoetida	hing;asafetida	spice	spice	?	vegan,vegetarian					
F	saffron	saffron threads;saffron strands;saffron powder	spice	spice		vegan,vegetarian	100	310 11.43 5.85 1.586 0.000 0.429 2.067 65.37 - - 3.9 0.0 0 148 1724 111 11.10 0.0 11.90 5.45	- 33.6 usda/02037		usda/02037
F	juniper berries	juniper;dried juniper berries	spice	spice		vegan,vegetarian	100	263 6.09 8.69 2.550 0.000 0.660 2.360 72.12 - - 21.6 0.0 0 77 1044 661 7.06 0.0 8.46 4.65	- 91.2 93.6 96 usda/02001	-/- 0.1 0.15 0.2 practice	usda/02001/stand-in
F	mahleb	mahlepi;ground mahleb	spice	spice		vegan,vegetarian			- 72 108 144 practice		
F	tonka bean		spice	spice		vegan,vegetarian					
F	liquorice root	licorice root;liquorice powder	spice	spice		vegan,vegetarian					
F	amchoor	dried mango powder;amchur	spice	spice		vegan,vegetarian			- 72 108 144 practice		
F	dried lime	black lime;loomi	spice	spice		vegan,vegetarian					
F	garlic powder	garlic granules;dried garlic;granulated garlic	spice	spice		vegan,vegetarian	100	331 16.55 0.73 0.249 0.000 0.115 0.178 72.73 2.43 - 9.0 0.0 0 60 1193 79 5.65 0.0 6.45 3.54	- 148.8 152 155.2 usda/02020		usda/02020
F	onion powder	onion granules	spice	spice		vegan,vegetarian	100	341 10.41 1.04 0.219 0.000 0.202 0.310 79.12 6.63 - 15.2 0.0 0 73 985 384 3.90 0.0 5.39 4.04	- 110.4 112.8 115.2 usda/02026		usda/02026
F	bay leaf	dried bay leaf;bay;laurel leaf;bay leaves=leaf;dried bay leaves=leaf;turkish bay leaf	spice	spice,dried herb		vegan,vegetarian	100	313 7.61 8.36 2.280 0.000 1.640 2.290 74.97 - - 26.3 0.0 0 23 529 834 43.00 0.0 5.44 3.62	- 28.8 usda/02004;crumbled 28.8 usda/02004	leaf/- 0.2 0.35 0.5 practice;-/- 0.2 0.35 0.5 practice	usda/02004
F	dried basil		spice	spice,dried herb		vegan,vegetarian	100	233 22.98 4.07 2.157 0.000 1.238 0.498 47.75 1.71 - 37.7 0.0 0 76 2630 2240 89.80 0.0 10.35 14.85	- 33.6 50.4 72 usda/02003;ground 67.2 69.6 72 usda/02003;leaves 33.6 usda/02003		usda/02003
F	dried oregano	dry oregano;mexican oregano;greek oregano;ground oregano	spice	spice,dried herb		vegan,vegetarian	100	265 9.00 4.28 1.551 0.000 0.716 1.369 68.92 4.09 - 42.5 0.0 0 25 1260 1597 36.80 0.0 9.93 7.87	- 48 67.2 86.4 usda/02027;ground 86.4 usda/02027;leaves 48 usda/02027		usda/02027
F	dried thyme	ground thyme;dried thyme leaves;dry thyme	spice	spice,dried herb		vegan,vegetarian	100	276 9.11 7.43 2.730 0.000 0.470 1.190 63.94 1.71 - 37.0 0.0 0 55 814 1890 123.60 0.0 7.79 11.74	- 43.2 57.6 68.8 usda/02042;ground 67.2 68 68.8 usda/02042;leaves 43.2 45.6 48 usda/02042		usda/02042
F	dried rosemary	crushed dried rosemary;ground rosemary	spice	spice,dried herb		vegan,vegetarian	100	331 4.88 15.22 7.371 - 3.014 2.339 64.06 - - 42.6 0.0 0 50 955 1280 29.25 0.0 9.31 6.53	- 52.8 55.2 57.6 usda/02036		usda/02036
F	dried sage	ground sage;rubbed sage;rubbed dried sage	spice	spice,dried herb		vegan,vegetarian	100	315 10.63 12.75 7.030 - 1.870 1.760 60.73 1.71 - 40.3 0.0 0 11 1070 1652 28.12 0.0 7.96 7.95	- 32 32.8 33.6 usda/02038		usda/02038
F	dried marjoram	dry marjoram	spice	spice,dried herb		vegan,vegetarian	100	271 12.66 7.04 0.529 0.000 0.940 4.405 60.56 4.09 - 40.3 0.0 0 77 1522 1990 82.71 0.0 7.64 12.10	- 27.2 28 28.8 usda/02023		usda/02023
F	dried savory	dried summer savory;ground savory	spice	spice,dried herb		vegan,vegetarian	100	272 6.73 5.91 3.260 0.000 - - 68.73 - - 45.7 - 0 24 1051 2132 37.88 0.0 9.00 9.63	- 67.2 68.8 70.4 usda/02039		usda/02039
F	dried tarragon		spice	spice,dried herb		vegan,vegetarian	100	295 22.77 7.24 1.881 0.000 0.474 3.698 50.22 - - 7.4 0.0 0 62 3020 1139 32.30 0.0 7.74 12.03	- 28.8 52.8 76.8 usda/02041;ground 76.8 usda/02041;leaves 28.8 usda/02041		usda/02041
F	dried parsley	parsley flakes	spice	spice,dried herb		vegan,vegetarian	100	292 26.63 5.48 1.378 0.000 0.761 3.124 50.64 7.27 - 26.7 0.0 0 452 2683 1140 22.04 0.0 5.89 11.36	- 24 24.8 25.6 usda/02029		usda/02029
F	dried dill	dried dill weed;dried dillweed	spice	spice,dried herb		vegan,vegetarian	100	253 19.96 4.36 0.234 0.000 - - 55.82 - - 13.6 - 0 208 3308 1784 48.78 0.0 7.30 12.56	- 48 48.8 49.6 usda/02017		usda/02017
F	dried mint	dried spearmint	spice	spice,dried herb		vegan,vegetarian	100	285 19.93 6.03 1.577 0.000 0.210 3.257 52.04 - - 29.8 - 0 344 1924 1488 87.47 0.0 11.30 10.70	- 24 24.8 25.6 usda/02066		usda/02066
F	dried chives	freeze-dried chives	spice	spice,dried herb		vegan,vegetarian	100	311 21.20 3.50 0.591 0.000 0.490 1.369 64.29 - - 26.2 0.0 0 70 2960 813 20.00 0.0 2.00 9.01	- 3.2 usda/11615		usda/11615
F	dried chervil		spice	spice,dried herb		vegan,vegetarian	100	237 23.20 3.90 0.169 0.000 1.399 1.800 49.10 - - 11.3 0.0 0 83 4740 1346 31.95 0.0 7.20 16.60	- 28.8 29.6 30.4 usda/02008		usda/02008
F	dried curry leaves		spice	spice,dried herb		vegan,vegetarian			- 33.6 52.8 72 practice		
F	dried mixed herbs	italian seasoning;italian herbs;mixed herbs;dried italian seasoning;herbes de provence;mixed dried herbs	spice	spice,dried herb		vegan,vegetarian	100	265 9.00 4.28 1.551 0.000 0.716 1.369 68.92 4.09 - 42.5 0.0 0 25 1260 1597 36.80 0.0 9.93 7.87	- 48 67.2 86.4 usda/02027;ground 86.4 usda/02027;leaves 48 usda/02027		usda/02027/stand-in
F	vanilla extract	pure vanilla extract;natural vanilla extract;vanilla;vanilla bean extract	liquid	flavouring		alcohol,vegan,vegetarian	100	288 0.06 0.06 0.010 0.000 0.010 0.004 12.65 12.65 - 0.0 34.4 0 9 148 11 0.12 0.0 52.58 0.26	- 201.6 208 227.2 usda/02050,bba		usda/02050
F	vanilla essence	imitation vanilla;vanilla flavouring;artificial vanilla extract;imitation vanilla extract	liquid	flavouring			100	237 0.05 0.00 - 0.000 - - 2.41 - - 0.0 32.9 0 4 98 0 0.13 0.0 64.46 0.22	- 201.6 204.8 208 usda/02051		usda/02051
F	vanilla bean paste	vanilla paste		flavouring		vegan,vegetarian			- 240 276 312 practice		
F	vanilla pod	vanilla bean;split vanilla pod;vanilla seeds;bourbon vanilla pod	spice	flavouring		vegan,vegetarian				-/- 2 3 4 practice	
F	vanilla powder	ground vanilla	spice	flavouring		vegan,vegetarian					
F	almond extract	almond essence;natural almond extract;pure almond extract	liquid	flavouring	?	alcohol	100	288 0.06 0.06 0.010 0.000 0.010 0.004 12.65 12.65 - 0.0 34.4 0 9 148 11 0.12 0.0 52.58 0.26	- 201.6 208 208 usda/02050		usda/02050/stand-in
F	lemon extract		liquid	flavouring		alcohol	100	288 0.06 0.06 0.010 0.000 0.010 0.004 12.65 12.65 - 0.0 34.4 0 9 148 11 0.12 0.0 52.58 0.26	- 201.6 208 208 usda/02050		usda/02050/stand-in
F	orange extract		liquid	flavouring		alcohol	100	288 0.06 0.06 0.010 0.000 0.010 0.004 12.65 12.65 - 0.0 34.4 0 9 148 11 0.12 0.0 52.58 0.26	- 201.6 208 208 usda/02050		usda/02050/stand-in
F	peppermint extract	peppermint oil;mint extract	liquid	flavouring					- 192 204 216 practice		
F	orange flower water	orange blossom water	liquid	flavouring		vegan,vegetarian		0 0 0 - - - - 0 0 - - 0 - 0 - - - - 100	- 234.222354135 235.4052953175 236.5882365 practice		memory
F	rose water	rosewater	liquid	flavouring		vegan,vegetarian		0 0 0 - - - - 0 0 - - 0 - 0 - - - - 100	- 234.222354135 235.4052953175 236.5882365 practice		memory
F	liquid smoke			flavouring		vegan,vegetarian			- 192 206.4 220.8 practice		
F	citric acid			flavouring		vegan,vegetarian		300 0 0 0 - - - - 0 - 0 0 - 0	- 192 216 240 practice		memory
F	ascorbic acid	vitamin c powder		flavouring		vegan,vegetarian					
F	food colouring	food coloring;gel food colouring;red food colouring		flavouring	?				- 192 206.4 220.8 practice		
F	edible glitter	gold leaf;edible gold leaf		flavouring							
F	activated charcoal			flavouring		vegan,vegetarian					
F	calcium chloride			flavouring		vegan,vegetarian					
F	slaked lime	pickling lime;calcium hydroxide		flavouring		vegan,vegetarian					
F	lye	caustic soda;sodium hydroxide;food-grade lye		flavouring		vegan,vegetarian,caustic					
F	food-grade lye solution	baker's lye		flavouring		vegan,vegetarian,caustic			- 192 206.4 220.8 practice		
F	powdered gelatine	gelatin;gelatine powder;powdered gelatin;unflavored gelatin;unflavoured gelatine;unflavored powdered gelatin;gelatine;gelatin powder		gelling agent		animal,meat	100	335 85.60 0.10 0.070 - 0.060 0.010 0.00 0.00 - 0.0 0.0 0 196 16 55 1.11 0.0 13.00 1.30	- 110.4 134.4 158.4 practice	leaf/- 1.6 2.55 3.5 practice;sheet/- 1.6 2.55 3.5 practice	usda/19177
F	gelatine leaf	leaf gelatine=leaf;sheet gelatine=sheet;gelatine sheet=sheet;gelatin sheet=sheet;gelatin leaf=leaf;leaves gelatine=leaf;gold leaf gelatine=leaf;platinum-grade gelatine leaves=leaf;bronze leaf gelatine=leaf;leaf of gelatine=leaf;sheet of gelatine=sheet		gelling agent		animal,meat	100	335 85.60 0.10 0.070 - 0.060 0.010 0.00 0.00 - 0.0 0.0 0 196 16 55 1.11 0.0 13.00 1.30		leaf/- 1.6 2.55 3.5 practice;sheet/- 1.6 2.55 3.5 practice;-/- 1.6 2.55 3.5 practice	usda/19177/stand-in
F	pectin	powdered pectin;pectin powder;apple pectin;dry pectin		gelling agent		vegan,vegetarian	100	325 0.30 0.30 0.050 - 0.010 0.090 90.40 - - 8.6 0.0 0 200 7 7 2.71 - 8.70 0.30	- 120 144 168 practice		usda/19310
F	liquid pectin			gelling agent		vegan,vegetarian	100	11 0.00 0.00 0.000 - 0.000 0.000 2.10 0.00 - 2.1 0.0 0 0 0 0 0.00 0.0 96.90 1.00			usda/42063
F	xanthan gum	xanthan		gelling agent		vegan,vegetarian			- 115.2 129.6 144 practice		
F	guar gum			gelling agent		vegan,vegetarian	100	332 4.60 0.50 0.060 - 0.220 0.070 77.30 0.00 - 77.3 0.0 0 125 0 294 0.00 0.0 15.00 2.60	- 120 144 168 practice		usda/42281/stand-in
F	locust bean gum	carob bean gum		gelling agent		vegan,vegetarian	100	332 4.60 0.50 0.060 - 0.220 0.070 77.30 0.00 - 77.3 0.0 0 125 0 294 0.00 0.0 15.00 2.60	- 120 144 168 practice		usda/42281/stand-in
F	apple	eating apple;dessert apple;red apple;crisp apple;cox apple;gala apple;fuji apple;braeburn apple;sweet apple;red eating apple	fruit	fruit,pome fruit		vegan,vegetarian	90	52 0.26 0.17 0.028 0.000 0.007 0.051 13.81 10.39 0.05 2.4 0.0 0 1 107 6 0.12 0.0 85.56 0.19	- 109 113 125 usda/09003,mill;chopped 125 usda/09003;sliced 109 111 113 usda/09003,mill	-/extra_small 101 usda/09003;-/large 223 usda/09003;-/medium 182 usda/09003;-/small 149 usda/09003;-/- 149 182 223 usda/09003	usda/09003
F	cooking apple	bramley apple;bramley cooking apple;bramley;tart cooking apple	fruit	fruit,pome fruit		vegan,vegetarian	77	48 0.27 0.13 0.021 0.000 0.005 0.037 12.76 10.10 - 1.3 0.0 0 0 90 5 0.07 0.0 86.67 0.17	- 110 usda/09004;sliced 110 usda/09004	-/large 216 usda/09004;-/medium 161 usda/09004;-/small 132 usda/09004;-/- 132 200 250 practice,usda/09004	usda/09004/stand-in
F	green apple	granny smith apple;granny smith;tart apple;sour apple	fruit	fruit,pome fruit		vegan,vegetarian	89	58 0.44 0.19 - 0.000 - - 13.61 9.59 0.05 2.8 - - 1 120 5 0.15 - 85.46 0.29	- 109 usda/09502;sliced 109 usda/09502	-/large 206 usda/09502;-/medium 167 usda/09502;-/small 144 usda/09502;-/- 144 167 206 usda/09502	usda/09502
F	golden delicious apple	golden apple	fruit	fruit,pome fruit		vegan,vegetarian	90	57 0.28 0.15 - 0.000 - - 13.60 10.04 0.05 2.4 - - 2 100 6 0.13 - 85.81 0.16	- 109 usda/09501;sliced 109 usda/09501	-/large 215 usda/09501;-/medium 169 usda/09501;-/small 129 usda/09501;-/- 129 169 215 usda/09501	usda/09501
F	crab apple	crabapple	fruit	fruit,pome fruit		vegan,vegetarian	92	76 0.40 0.30 0.048 0.000 0.012 0.088 19.95 - - - - 0 1 194 18 0.36 - 78.94 0.42	- 110 usda/09077;sliced 110 usda/09077		usda/09077
F	pear	conference pear;ripe pear;bosc pear;comice pear;dessert pear;anjou pear;williams pear;bartlett pear;firm pear	fruit	fruit,pome fruit		vegan,vegetarian	90	57 0.36 0.14 0.022 0.000 0.084 0.094 15.23 9.75 - 3.1 0.0 0 1 116 9 0.18 0.0 83.96 0.32	- 140 150.5 161 usda/09252;diced 161 usda/09252;sliced 140 usda/09252	-/large 230 usda/09252;-/medium 178 usda/09252;-/small 148 usda/09252;-/-@ 150 185 220 practice;-/- 148 178 230 usda/09252	usda/09252
F	Asian pear	nashi;nashi pear	fruit	fruit,pome fruit		vegan,vegetarian	91	42 0.50 0.23 0.012 0.000 0.049 0.055 10.65 7.05 - 3.6 0.0 0 0 121 4 0.00 0.0 88.25 0.37			usda/09340
F	quince		fruit	fruit,pome fruit		vegan,vegetarian	61	57 0.40 0.10 0.010 0.000 0.036 0.050 15.30 - - 1.9 0.0 0 4 197 11 0.70 - 83.80 0.40		-/- 92 usda/09296	usda/09296
F	medlar		fruit	fruit,pome fruit		vegan,vegetarian					
F	loquat		fruit	fruit,pome fruit		vegan,vegetarian	65	47 0.43 0.20 0.040 0.000 0.008 0.091 12.14 - - 1.7 0.0 0 1 266 16 0.28 - 86.73 0.50	- 149 usda/09174;diced 149 usda/09174	-/large 20 usda/09174;-/medium 16 usda/09174;-/small 13.6 usda/09174;-/- 13.6 16 20 usda/09174	usda/09174
F	lemon	unwaxed lemon;whole lemon;fresh lemon;thin-skinned lemon	fruit	fruit,citrus fruit		vegan,vegetarian	53	29 1.10 0.30 0.039 0.000 0.011 0.089 9.32 2.50 - 2.8 0.0 0 2 138 26 0.60 0.0 88.98 0.30	- 212 usda/09150;segments 212 usda/09150	wedge/- 7 usda/09150;-/-@ 100 125 150 practice;-/- 58 71 84 usda/09150	usda/09150
F	lime	unwaxed lime;fresh lime;whole lime	fruit	fruit,citrus fruit		vegan,vegetarian	84	30 0.70 0.20 0.022 0.000 0.019 0.055 10.54 1.69 - 2.8 0.0 0 2 102 33 0.60 0.0 88.26 0.30		-/-@ 60 75 90 practice;-/- 67 usda/09159	usda/09159
F	orange	sweet orange;navel orange;unwaxed orange;valencia orange;fresh orange	fruit	fruit,citrus fruit		vegan,vegetarian	73	47 0.94 0.12 0.015 0.000 0.023 0.025 11.75 9.35 - 2.4 0.0 0 0 181 40 0.10 0.0 86.75 0.44	- 180 usda/09200;segments 180 usda/09200	-/large 184 usda/09200;-/small 96 usda/09200;-/-@ 150 185 220 practice;-/- 96 131 184 usda/09200	usda/09200
F	blood orange		fruit	fruit,citrus fruit		vegan,vegetarian	73	47 0.94 0.12 0.015 0.000 0.023 0.025 11.75 9.35 - 2.4 0.0 0 0 181 40 0.10 0.0 86.75 0.44	- 180 usda/09200;segments 180 usda/09200	-/large 184 usda/09200;-/small 96 usda/09200;-/- 96 131 184 usda/09200	usda/09200/stand-in
F	Seville orange	bitter orange;marmalade orange;sour orange	fruit	fruit,citrus fruit		vegan,vegetarian	73	47 0.94 0.12 0.015 0.000 0.023 0.025 11.75 9.35 - 2.4 0.0 0 0 181 40 0.10 0.0 86.75 0.44		-/- 120 150 180 practice	usda/09200/stand-in
F	mandarin	tangerine;satsuma;mandarin orange	fruit	fruit,citrus fruit		vegan,vegetarian	74	53 0.81 0.31 0.039 0.000 0.060 0.065 13.34 10.58 0.00 1.8 0.0 0 2 166 37 0.15 0.0 85.17 0.38	- 195 usda/09218;segments 195 usda/09218	-/large 120 usda/09218;-/medium 88 usda/09218;-/small 76 usda/09218;-/- 76 88 120 usda/09218	usda/09218
F	clementine		fruit	fruit,citrus fruit		vegan,vegetarian	77	47 0.85 0.15 - 0.000 - - 12.02 9.18 0.00 1.7 - - 1 177 30 0.14 0.0 86.58 0.40		-/- 74 usda/09433	usda/09433
F	grapefruit	pink grapefruit;red grapefruit;ruby grapefruit	fruit	fruit,citrus fruit		vegan,vegetarian	50	32 0.63 0.10 0.014 0.000 0.013 0.024 8.08 6.98 - 1.1 0.0 0 0 139 12 0.09 0.0 90.89 0.31	- 230 usda/09111;segments 230 usda/09111	-/large 332 usda/09111;-/medium 256 usda/09111;-/small 200 usda/09111;-/- 200 256 332 usda/09111	usda/09111
F	white grapefruit		fruit	fruit,citrus fruit		vegan,vegetarian	49	33 0.69 0.10 0.014 0.000 0.013 0.024 8.41 7.31 - 1.1 0.0 0 0 148 12 0.06 0.0 90.48 0.33	- 230 usda/09116;segments 230 usda/09116	-/- 236 usda/09116	usda/09116
F	pomelo	pummelo	fruit	fruit,citrus fruit		vegan,vegetarian	56	38 0.76 0.04 - 0.000 - - 9.62 - - 1.0 - 0 1 216 4 0.11 - 89.10 0.48	- 190 usda/09295;segments 190 usda/09295	-/- 609 usda/09295	usda/09295
F	kumquat		fruit	fruit,citrus fruit		vegan,vegetarian	93	71 1.88 0.86 0.103 0.000 0.154 0.171 15.90 9.36 - 6.5 0.0 0 10 186 62 0.86 0.0 80.85 0.52		-/- 19 usda/09149	usda/09149
F	yuzu		fruit	fruit,citrus fruit		vegan,vegetarian	53	29 1.10 0.30 0.039 0.000 0.011 0.089 9.32 2.50 - 2.8 0.0 0 2 138 26 0.60 0.0 88.98 0.30		-/- 80 100 120 practice	usda/09150/stand-in
F	lemon zest	lemon peel;grated lemon zest;lemon rind;finely grated lemon zest;grated lemon rind;zest of lemon;lemon zest grated;zest lemon;strip of lemon zest;lemon peel strips;rind of lemon;peel of lemon	fruit	fruit,citrus fruit		vegan,vegetarian	100	47 1.50 0.30 0.039 0.000 0.011 0.089 16.00 4.17 - 10.6 0.0 0 6 160 134 0.80 0.0 81.60 0.60	- 96 usda/09156		usda/09156
F	orange zest	orange peel;grated orange zest;orange rind;finely grated orange zest;grated orange rind;zest of orange;strip of orange zest;rind of orange;peel of orange	fruit	fruit,citrus fruit		vegan,vegetarian	100	97 1.50 0.20 0.024 0.000 0.036 0.040 25.00 - - 10.6 0.0 0 3 212 161 0.80 - 72.50 0.80	- 96 usda/09216		usda/09216
F	lime zest	lime peel;grated lime zest;zest of lime;lime rind	fruit	fruit,citrus fruit		vegan,vegetarian	100	47 1.50 0.30 0.039 0.000 0.011 0.089 16.00 4.17 - 10.6 0.0 0 6 160 134 0.80 0.0 81.60 0.60	- 96 usda/09156		usda/09156/stand-in
F	grapefruit zest		fruit	fruit,citrus fruit		vegan,vegetarian	100	97 1.50 0.20 0.024 0.000 0.036 0.040 25.00 - - 10.6 0.0 0 3 212 161 0.80 - 72.50 0.80	- 96 usda/09216		usda/09216/stand-in
F	mandarin segments	tinned mandarins;canned mandarin oranges;tinned mandarin oranges	fruit	fruit,citrus fruit		vegan,vegetarian	100	37 0.62 0.03 0.003 0.000 0.005 0.005 9.57 8.87 - 0.7 0.0 0 5 133 11 0.27 0.0 89.51 0.28	- 249 usda/09219		usda/09219
F	preserved lemon	salted lemon	fruit	fruit,citrus fruit		vegan,vegetarian					
F	peach	yellow peach;white peach;ripe peach	fruit	fruit,stone fruit		vegan,vegetarian	96	39 0.91 0.25 0.019 0.000 0.067 0.086 9.54 8.39 0.00 1.5 0.0 0 0 190 6 0.25 0.0 88.87 0.43	- 154 usda/09236;sliced 154 usda/09236	-/extra_large 224 usda/09236;-/large 175 usda/09236;-/medium 150 usda/09236;-/small 130 usda/09236;-/- 130 150 175 usda/09236	usda/09236
F	nectarine		fruit	fruit,stone fruit		vegan,vegetarian	91	44 1.06 0.32 0.025 0.000 0.088 0.113 10.55 7.89 0.07 1.7 0.0 0 0 201 6 0.28 0.0 87.59 0.48	- 143 usda/09191;sliced 143 usda/09191	-/large 156 usda/09191;-/medium 142 usda/09191;-/small 129 usda/09191;-/- 129 142 156 usda/09191	usda/09191
F	apricot	fresh apricot;ripe apricot	fruit	fruit,stone fruit		vegan,vegetarian	93	48 1.40 0.39 0.027 0.000 0.170 0.077 11.12 9.24 - 2.0 0.0 0 1 259 13 0.39 0.0 86.35 0.75	- 155 160 165 usda/09021;halved 155 usda/09021;sliced 165 usda/09021	-/- 35 usda/09021	usda/09021
F	plum	red plum;victoria plum;ripe plum;purple plum;italian plum	fruit	fruit,stone fruit		vegan,vegetarian	94	46 0.70 0.28 0.017 0.000 0.134 0.044 11.42 9.92 0.00 1.4 0.0 0 0 157 6 0.17 0.0 87.23 0.37	- 165 usda/09279;sliced 165 usda/09279	-/- 66 usda/09279	usda/09279
F	greengage		fruit	fruit,stone fruit		vegan,vegetarian	94	46 0.70 0.28 0.017 0.000 0.134 0.044 11.42 9.92 0.00 1.4 0.0 0 0 157 6 0.17 0.0 87.23 0.37	- 165 usda/09279;sliced 165 usda/09279	-/- 66 usda/09279	usda/09279/stand-in
F	damson	damson plum	fruit	fruit,stone fruit		vegan,vegetarian	94	46 0.70 0.28 0.017 0.000 0.134 0.044 11.42 9.92 0.00 1.4 0.0 0 0 157 6 0.17 0.0 87.23 0.37		-/- 15 20 25 practice	usda/09279/stand-in
F	sloe	sloe berries;sloes	fruit	fruit,stone fruit		vegan,vegetarian	94	46 0.70 0.28 0.017 0.000 0.134 0.044 11.42 9.92 0.00 1.4 0.0 0 0 157 6 0.17 0.0 87.23 0.37		-/- 2 3 4 practice	usda/09279/stand-in
F	cherry	sweet cherry;fresh cherry;ripe cherry;black cherry;dark sweet cherry;red cherry;pitted cherry;stoned cherry	fruit	fruit,stone fruit		vegan,vegetarian	92	63 1.06 0.20 0.038 0.000 0.047 0.052 16.01 12.82 0.00 2.1 0.0 0 0 222 13 0.36 0.0 82.25 0.48	- 154 usda/09070;whole 154 usda/09070	-/- 8.2 usda/09070	usda/09070
F	sour cherry	morello cherry;tart cherry;fresh sour cherry	fruit	fruit,stone fruit		vegan,vegetarian	90	50 1.00 0.30 0.068 0.000 0.082 0.090 12.18 8.49 - 1.6 0.0 0 3 173 16 0.32 0.0 86.13 0.40	- 155 usda/09063;whole 155 usda/09063		usda/09063
F	mango	ripe mango;fresh mango;alphonso mango	fruit	fruit,stone fruit		vegan,vegetarian	71	60 0.82 0.38 0.092 0.000 0.140 0.071 14.98 13.66 - 1.6 0.0 0 1 168 11 0.16 0.0 83.46 0.36	- 165 usda/09176;chopped 165 usda/09176	-/- 336 usda/09176	usda/09176
F	lychee	litchi	fruit	fruit,stone fruit		vegan,vegetarian	60	66 0.83 0.44 0.099 0.000 0.120 0.132 16.53 15.23 - 1.3 0.0 0 1 171 5 0.31 0.0 81.76 0.44	- 190 usda/09164	-/- 9.6 usda/09164	usda/09164
F	date	dried date;pitted date;stoned date;soft date;chopped date;deglet noor date	fruit	fruit,dried fruit		vegan,vegetarian	90	282 2.45 0.39 0.032 0.000 0.036 0.019 75.03 63.35 - 8.0 0.0 0 2 656 39 1.02 0.0 20.53 1.60	- 147 usda/09087;chopped 147 usda/09087	-/- 7.1 usda/09087	usda/09087
F	medjool date	fresh date	fruit	fruit,dried fruit		vegan,vegetarian	92	277 1.81 0.15 - 0.000 - - 74.97 66.47 - 6.7 - - 1 696 64 0.90 0.0 21.32 1.74		-/- 24 usda/09421	usda/09421
F	strawberry	fresh strawberry;hulled strawberry;ripe strawberry	fruit	fruit,berry		vegan,vegetarian	94	32 0.67 0.30 0.015 0.000 0.043 0.155 7.68 4.89 0.04 2.0 0.0 0 1 153 16 0.41 0.0 90.95 0.40	- 144 152 166 usda/09316;halved 152 usda/09316;puréed 232 usda/09316;sliced 166 usda/09316;whole 144 usda/09316	-/extra_large 27 usda/09316;-/large 18 usda/09316;-/medium 12 usda/09316;-/small 7 usda/09316;-/- 7 12 18 usda/09316	usda/09316
F	raspberry	fresh raspberry;red raspberry	fruit	fruit,berry		vegan,vegetarian	96	52 1.20 0.65 0.019 0.000 0.064 0.375 11.94 4.42 0.00 6.5 0.0 0 1 151 25 0.69 0.0 85.75 0.46	- 123 usda/09302	-/- 1.9 usda/09302	usda/09302
F	blackberry	bramble;fresh blackberry	fruit	fruit,berry		vegan,vegetarian	96	43 1.39 0.49 0.014 0.000 0.047 0.280 9.61 4.88 0.00 5.3 0.0 0 1 162 29 0.62 0.0 88.15 0.37	- 144 usda/09042		usda/09042
F	blueberry	fresh blueberry;bilberry;wild blueberry	fruit	fruit,berry		vegan,vegetarian	95	57 0.74 0.33 0.028 0.000 0.047 0.146 14.49 9.96 0.03 2.4 0.0 0 1 77 6 0.28 0.0 84.21 0.24	- 148 usda/09050	-/- 1.36 usda/09050	usda/09050
F	blackcurrant	black currant;fresh blackcurrant	fruit	fruit,berry		vegan,vegetarian	98	63 1.40 0.41 0.034 0.000 0.058 0.179 15.38 - - - - 0 2 322 55 1.54 - 81.96 0.86	- 112 usda/09083		usda/09083
F	redcurrant	red currant;white currant;whitecurrant	fruit	fruit,berry		vegan,vegetarian	98	56 1.40 0.20 0.017 0.000 0.028 0.088 13.80 7.37 - 4.3 0.0 0 1 275 33 1.00 0.0 83.95 0.66	- 112 usda/09084		usda/09084
F	gooseberry	green gooseberry	fruit	fruit,berry		vegan,vegetarian	100	44 0.88 0.58 0.038 0.000 0.051 0.317 10.18 - - 4.3 0.0 0 1 198 25 0.31 - 87.87 0.49	- 150 usda/09107		usda/09107
F	cranberry	fresh cranberry;frozen cranberry	fruit	fruit,berry		vegan,vegetarian	98	46 0.46 0.13 0.008 0.000 0.018 0.055 11.97 4.27 0.00 3.6 0.0 0 2 80 8 0.23 0.0 87.32 0.12	- 100 105 110 usda/09078;chopped 110 usda/09078;whole 100 usda/09078		usda/09078
F	boysenberry		fruit	fruit,berry		vegan,vegetarian	100	50 1.10 0.26 0.009 0.000 0.025 0.148 12.19 6.89 - 5.3 0.0 0 1 139 27 0.85 0.0 85.90 0.54	- 132 usda/09057		usda/09057
F	loganberry	tayberry	fruit	fruit,berry		vegan,vegetarian	100	55 1.52 0.31 0.011 0.000 0.030 0.176 13.02 7.70 - 5.3 0.0 0 1 145 26 0.64 0.0 84.61 0.54	- 147 usda/09167		usda/09167
F	elderberry		fruit	fruit,berry		vegan,vegetarian,cook-before-eating	100	73 0.66 0.50 0.023 0.000 0.080 0.247 18.40 - - 7.0 0.0 0 6 280 38 1.60 - 79.80 0.64	- 145 usda/09088		usda/09088
F	mulberry		fruit	fruit,berry		vegan,vegetarian	100	43 1.44 0.39 0.027 0.000 0.041 0.207 9.80 8.10 - 1.7 0.0 0 10 194 39 1.85 0.0 87.68 0.69	- 140 usda/09190	-/- 1.5 usda/09190	usda/09190
F	lingonberry	cowberry	fruit	fruit,berry		vegan,vegetarian	98	46 0.46 0.13 0.008 0.000 0.018 0.055 11.97 4.27 0.00 3.6 0.0 0 2 80 8 0.23 0.0 87.32 0.12	- 100 115 130 practice		usda/09078/stand-in
F	cloudberry		fruit	fruit,berry		vegan,vegetarian	96	52 1.20 0.65 0.019 0.000 0.064 0.375 11.94 4.42 0.00 6.5 0.0 0 1 151 25 0.69 0.0 85.75 0.46			usda/09302/stand-in
F	sea buckthorn	sea buckthorn berries	fruit	fruit,berry		vegan,vegetarian					
F	rowan berries		fruit	fruit,berry		vegan,vegetarian,cook-before-eating					
F	rose hips	rosehip	fruit	fruit,berry		vegan,vegetarian					
F	frozen strawberries	frozen whole strawberries	fruit	fruit,berry		vegan,vegetarian	100	35 0.43 0.11 0.006 0.000 0.015 0.054 9.13 4.56 - 2.1 0.0 0 2 148 16 0.75 0.0 89.97 0.37	- 149 185 221 usda/09318	-/- 10.6 usda/09318	usda/09318
F	frozen raspberries		fruit	fruit,berry		vegan,vegetarian	100	52 1.20 0.65 - 0.000 - - 11.94 4.42 0.00 6.5 0.0 0 1 151 25 0.69 0.0 85.75 0.46	- 140 usda/09518		usda/09518
F	frozen blueberries		fruit	fruit,berry		vegan,vegetarian	100	51 0.42 0.64 0.053 0.000 0.091 0.279 12.17 8.45 - 2.7 0.0 0 1 54 8 0.18 0.0 86.59 0.18	- 155 usda/09054		usda/09054
F	frozen blackberries		fruit	fruit,berry		vegan,vegetarian	100	64 1.18 0.43 0.015 0.000 0.041 0.245 15.67 10.67 - 5.0 0.0 0 1 140 29 0.80 0.0 82.21 0.51	- 151 usda/09048		usda/09048
F	mixed berries	frozen mixed berries;summer fruits;frozen berries;mixed summer berries;frozen summer fruits;berries	fruit	fruit,berry		vegan,vegetarian	96	52 1.20 0.65 0.019 0.000 0.064 0.375 11.94 4.42 0.00 6.5 0.0 0 1 151 25 0.69 0.0 85.75 0.46	- 130 140 150 practice		usda/09302/stand-in
F	Cape gooseberry	physalis;ground cherry	fruit	fruit,berry		vegan,vegetarian	94	53 1.90 0.70 - 0.000 - - 11.20 - - - - 0 - - 9 1.00 - 85.40 0.80	- 140 usda/09138		usda/09138
F	grapes	red grapes;seedless grapes;green grapes;white grapes;black grapes	fruit	fruit,berry		vegan,vegetarian	96	69 0.72 0.16 0.054 0.000 0.007 0.048 18.10 15.48 0.00 0.9 0.0 0 2 191 10 0.36 0.0 80.54 0.48	- 151 usda/09132	-/- 4.9 usda/09132	usda/09132
F	banana	ripe banana;overripe banana;very ripe banana;mashed banana;peeled banana	fruit	fruit,tropical fruit		vegan,vegetarian	64	89 1.09 0.33 0.112 0.000 0.032 0.073 22.84 12.23 5.38 2.6 0.0 0 1 358 5 0.26 0.0 74.91 0.82	- 150 usda/09040;mashed 225 226 227 usda/09040,mill;sliced 150 usda/09040	-/extra_large 152 usda/09040;-/extra_small 81 usda/09040;-/large 136 usda/09040;-/medium 118 usda/09040;-/small 101 usda/09040;-/- 101 118 136 usda/09040	usda/09040
F	pineapple	fresh pineapple;ripe pineapple	fruit	fruit,tropical fruit		vegan,vegetarian	51	50 0.54 0.12 0.009 0.000 0.013 0.040 13.12 9.85 0.00 1.4 0.0 0 1 109 13 0.29 0.0 86.00 0.22	- 165 usda/09266;diced 165 usda/09266	slice/- 56 84 166 usda/09266;-/- 905 usda/09266	usda/09266
F	papaya	ripe papaya;pawpaw	fruit	fruit,tropical fruit		vegan,vegetarian	62	43 0.47 0.26 0.081 0.000 0.072 0.058 10.82 7.82 0.00 1.7 0.0 0 8 182 20 0.25 0.0 88.06 0.39	- 145 usda/09226;chopped 145 usda/09226;mashed 230 usda/09226	-/large 781 usda/09226;-/small 157 usda/09226;-/- 157 469 781 usda/09226	usda/09226
F	passion fruit	passionfruit;passion fruit pulp	fruit	fruit,tropical fruit		vegan,vegetarian	52	97 2.20 0.70 0.059 0.000 0.086 0.411 23.38 11.20 - 10.4 0.0 0 28 348 12 1.60 0.0 72.93 0.80	- 236 usda/09231	-/- 18 usda/09231	usda/09231
F	kiwi fruit	kiwi;kiwifruit;green kiwi	fruit	fruit,tropical fruit		vegan,vegetarian	76	61 1.14 0.52 0.029 0.000 0.047 0.287 14.66 8.99 0.00 3.0 0.0 0 3 312 34 0.31 0.0 83.07 0.61	- 180 usda/09148;sliced 180 usda/09148	-/- 69 usda/09148	usda/09148
F	guava		fruit	fruit,tropical fruit		vegan,vegetarian	78	68 2.55 0.95 0.272 0.000 0.087 0.401 14.32 8.92 - 5.4 0.0 0 2 417 18 0.26 0.0 80.80 1.39	- 165 usda/09139	-/- 55 usda/09139	usda/09139
F	star fruit	carambola	fruit	fruit,tropical fruit		vegan,vegetarian	97	31 1.04 0.33 0.019 0.000 0.030 0.184 6.73 3.98 - 2.8 0.0 0 2 133 3 0.08 0.0 91.38 0.52	- 108 120 132 usda/09060;diced 132 usda/09060;sliced 108 usda/09060	-/large 124 usda/09060;-/medium 91 usda/09060;-/small 70 usda/09060;-/- 70 91 124 usda/09060	usda/09060
F	dragon fruit	pitaya	fruit	fruit,tropical fruit		vegan,vegetarian					
F	persimmon	sharon fruit;kaki	fruit	fruit,tropical fruit		vegan,vegetarian	84	70 0.58 0.19 0.020 0.000 0.037 0.043 18.59 12.53 - 3.6 0.0 0 1 161 8 0.15 0.0 80.32 0.33		-/- 168 usda/09263,practice	usda/09263
F	pomegranate	pomegranate seeds;pomegranate arils;pomegranate fruit	fruit	fruit,tropical fruit		vegan,vegetarian	56	83 1.67 1.17 0.120 0.000 0.093 0.079 18.70 13.67 - 4.0 0.0 0 3 236 10 0.30 0.0 77.93 0.53	- 174 usda/09286	-/- 282 usda/09286	usda/09286
F	fig	fresh fig;ripe fig	fruit	fruit,tropical fruit		vegan,vegetarian	99	74 0.75 0.30 0.060 0.000 0.066 0.144 19.18 16.26 - 2.9 0.0 0 1 232 35 0.37 0.0 79.11 0.66		-/large 64 usda/09089;-/medium 50 usda/09089;-/small 40 usda/09089;-/- 40 50 64 usda/09089	usda/09089
F	cantaloupe	cantaloupe melon;charentais melon;rock melon;orange-fleshed melon	fruit	fruit,tropical fruit		vegan,vegetarian	51	34 0.84 0.19 0.051 0.000 0.003 0.081 8.16 7.86 0.03 0.9 0.0 0 16 267 9 0.21 0.0 90.15 0.65	- 156 160 177 usda/09181;diced 156 160 177 usda/09181	wedge/large 102 usda/09181;wedge/medium 69 usda/09181;wedge/small 55 usda/09181;wedge/- 55 69 102 usda/09181;-/large 814 usda/09181;-/medium 552 usda/09181;-/small 441 usda/09181;-/- 441 552 814 usda/09181	usda/09181
F	honeydew melon	honeydew;galia melon	fruit	fruit,tropical fruit		vegan,vegetarian	46	36 0.54 0.14 0.038 0.000 0.003 0.059 9.09 8.12 0.00 0.8 0.0 0 18 228 6 0.17 0.0 89.82 0.41	- 170 173.5 177 usda/09184;diced 170 173.5 177 usda/09184	wedge/- 125 142.5 160 usda/09184;-/- 1000 1140 1280 usda/09184	usda/09184
F	watermelon	water melon	fruit	fruit,tropical fruit		vegan,vegetarian	52	30 0.61 0.15 0.016 0.000 0.037 0.050 7.55 6.20 0.00 0.4 0.0 0 1 112 7 0.24 0.0 91.45 0.25	- 152 153 154 usda/09326;diced 152 153 154 usda/09326	wedge/- 286 usda/09326;-/- 4518 usda/09326	usda/09326
F	tamarind	tamarind pulp;tamarind paste;tamarind block;tamarind concentrate	fruit	fruit,tropical fruit		vegan,vegetarian	34	239 2.80 0.60 0.272 0.000 0.181 0.059 62.50 38.80 - 5.1 0.0 0 28 628 74 2.80 0.0 31.40 2.70	- 120 usda/09322	-/- 2 usda/09322	usda/09322
F	soursop		fruit	fruit,tropical fruit		vegan,vegetarian	67	66 1.00 0.30 0.051 0.000 0.090 0.069 16.84 13.54 - 3.3 0.0 0 14 278 14 0.60 0.0 81.16 0.70	- 225 usda/09315	-/- 625 usda/09315	usda/09315
F	custard apple	cherimoya	fruit	fruit,tropical fruit		vegan,vegetarian	69	75 1.57 0.68 0.233 0.000 0.055 0.188 17.71 12.87 0.00 3.0 - 0 7 287 10 0.27 - 79.39 0.65	- 160 usda/09062;chopped 160 usda/09062	-/- 235 usda/09062	usda/09062
F	durian		fruit	fruit,tropical fruit		vegan,vegetarian	32	147 1.47 5.33 - 0.000 - - 27.09 - - 3.8 - 0 2 436 6 0.43 - 64.99 1.12	- 243 usda/09422;chopped 243 usda/09422;diced 243 usda/09422	-/- 602 usda/09422	usda/09422
F	mangosteen		fruit	fruit,tropical fruit		vegan,vegetarian					
F	rambutan		fruit	fruit,tropical fruit		vegan,vegetarian					
F	prickly pear		fruit	fruit,tropical fruit		vegan,vegetarian	75	41 0.73 0.51 0.067 0.000 0.075 0.213 9.57 - - 3.6 0.0 0 5 220 56 0.30 - 87.55 1.64	- 149 usda/09287	-/- 103 usda/09287	usda/09287
F	rhubarb	forced rhubarb;rhubarb stalks=stalk;rhubarb stick=stalk;pink rhubarb	fruit,vegetable	fruit		vegan,vegetarian	75	21 0.90 0.20 0.053 0.000 0.039 0.099 4.54 1.10 - 1.8 0.0 0 4 288 86 0.22 0.0 93.61 0.76	- 122 usda/09307;diced 122 usda/09307	stalk/- 51 51 100 usda/09307,practice;-/- 51 75.5 100 practice	usda/09307
F	tinned pineapple	canned pineapple;pineapple rings in juice;pineapple chunks in juice;crushed pineapple;tinned pineapple in juice;canned crushed pineapple;pineapple chunks	fruit	fruit,tinned fruit		vegan,vegetarian	100	60 0.42 0.08 0.006 0.000 0.010 0.029 15.70 14.45 - 0.8 0.0 0 1 122 14 0.28 0.0 83.51 0.30	- 249 usda/09268	slice/- 47 usda/09268	usda/09268
F	tinned peaches	canned peaches;peaches in juice;tinned peaches in juice	fruit	fruit,tinned fruit		vegan,vegetarian	100	44 0.63 0.03 0.004 0.000 0.012 0.016 11.57 10.27 - 1.3 0.0 0 4 128 6 0.27 0.0 87.49 0.27	- 250 usda/09238;sliced 248 usda/09238	half/- 98 usda/09238	usda/09238
F	tinned pears	canned pears;pears in juice	fruit	fruit,tinned fruit		vegan,vegetarian	100	50 0.34 0.07 0.004 0.000 0.014 0.015 12.94 9.70 - 1.6 0.0 0 4 96 9 0.29 0.0 86.47 0.19	- 248 usda/09254;halved 248 usda/09254	half/- 76 usda/09254	usda/09254
F	tinned apricots	canned apricots;apricots in juice	fruit	fruit,tinned fruit		vegan,vegetarian	100	48 0.63 0.04 0.003 0.000 0.017 0.007 12.34 10.74 - 1.6 0.0 0 4 165 12 0.30 0.0 86.62 0.37	- 244 usda/09024;halved 244 usda/09024		usda/09024
F	tinned cherries	canned cherries;tinned sweet cherries;cherries in juice	fruit	fruit,tinned fruit		vegan,vegetarian	92	54 0.91 0.02 0.004 0.000 0.005 0.006 13.81 12.31 - 1.5 0.0 0 3 131 14 0.58 0.0 84.95 0.31	- 250 usda/09072;whole 250 usda/09072		usda/09072
F	morello cherries in syrup	jarred sour cherries;sour cherries in syrup;jarred morello cherries	fruit	fruit,tinned fruit		vegan,vegetarian					
F	maraschino cherries	cocktail cherries	fruit	fruit,tinned fruit	?		100	165 0.22 0.21 0.039 0.000 0.049 0.055 41.97 38.77 - 3.2 0.0 0 4 21 54 0.43 0.0 57.27 0.34		-/- 5 usda/09328	usda/09328
F	raisins	seedless raisins;dark raisins;thompson raisins;jumbo raisins	fruit	fruit,dried fruit		vegan,vegetarian	100	299 3.07 0.46 0.058 0.000 0.051 0.037 79.18 59.19 2.70 3.7 0.0 0 11 749 50 1.88 0.0 15.43 1.85	- 145 165 170 usda/09298,mill,bba;loose 149 mill;packed 165 167.5 170 usda/09298,mill	-/- 0.52 usda/09298	usda/09298
F	sultanas	golden raisins;golden sultanas;light raisins;golden seedless raisins	fruit	fruit,dried fruit	?	vegan,vegetarian	100	302 3.39 0.46 0.151 0.000 0.019 0.135 79.52 59.19 - 4.0 0.0 0 12 746 53 1.79 0.0 14.97 1.66	- 145 155 165 usda/09297;packed 165 usda/09297		usda/09297
F	dried currants	currants;zante currants;vostizza currants	fruit	fruit,dried fruit		vegan,vegetarian	100	283 4.08 0.27 0.028 - 0.047 0.180 74.08 67.28 - 6.8 0.0 0 8 892 86 3.26 0.0 19.21 2.36	- 144 usda/09085		usda/09085
F	mixed dried fruit	dried mixed fruit;mixed fruit;luxury mixed fruit;dried fruit;dried vine fruit;mixed vine fruits	fruit	fruit,dried fruit	?	vegan,vegetarian	100	299 3.07 0.46 0.058 0.000 0.051 0.037 79.18 59.19 2.70 3.7 0.0 0 11 749 50 1.88 0.0 15.43 1.85	- 128 155 175.07529501 usda/09298,mill,au250;packed 165 usda/09298		usda/09298/stand-in
F	dried apricots	soft dried apricots;ready-to-eat dried apricots;dried apricot halves;ready-to-eat apricots	fruit	fruit,dried fruit	sulphites	vegan,vegetarian	100	241 3.39 0.51 0.017 - 0.074 0.074 62.64 53.44 0.35 7.3 0.0 0 10 1162 55 2.66 0.0 30.89 2.57	- 128 129 130 usda/09032,mill;diced 128 mill;halved 130 usda/09032	half/- 3.5 usda/09032	usda/09032
F	unsulphured dried apricots	unsulfured dried apricots;organic dried apricots	fruit	fruit,dried fruit		vegan,vegetarian	100	241 3.39 0.51 0.017 - 0.074 0.074 62.64 53.44 0.35 7.3 0.0 0 10 1162 55 2.66 0.0 30.89 2.57	- 130 usda/09032;halved 130 usda/09032	half/- 3.5 usda/09032	usda/09032/stand-in
F	prunes	pitted prunes;stoned prunes;ready-to-eat prunes;dried plums;soft prunes	fruit	fruit,dried fruit		vegan,vegetarian	87	240 2.18 0.38 0.088 - 0.053 0.062 63.88 38.13 5.11 7.1 0.0 0 2 732 43 0.93 0.0 30.92 2.64	- 174 usda/09291;whole 174 usda/09291	-/- 9.5 usda/09291	usda/09291
F	dried figs	soft dried figs;ready-to-eat figs	fruit	fruit,dried fruit		vegan,vegetarian	96	249 3.30 0.93 0.144 - 0.159 0.345 63.87 47.92 5.07 9.8 0.0 0 10 680 162 2.03 0.0 30.05 1.86	- 149 usda/09094	-/- 8.4 usda/09094	usda/09094
F	dried cranberries	sweetened dried cranberries	fruit	fruit,dried fruit		vegan,vegetarian	100	308 0.17 1.09 0.088 0.003 0.298 0.182 82.80 72.56 - 5.3 0.0 0 5 49 9 0.39 0.0 15.79 0.15	- 120 160 160 usda/09079,usda-r27		usda/09079
F	dried cherries	dried sour cherries;dried tart cherries;sour dried cherries	fruit	fruit,dried fruit		vegan,vegetarian	100	333 1.25 0.73 0.146 0.000 0.177 0.194 80.45 67.15 - 2.5 0.0 0 13 376 38 0.68 0.0 16.60 0.97	- 160 usda/09044		usda/09044
F	dried blueberries		fruit	fruit,dried fruit		vegan,vegetarian	100	317 2.50 2.50 0.200 0.000 0.405 1.300 80.00 67.50 - 7.5 0.0 0 3 214 19 0.90 0.0 14.80 0.73	- 160 usda/09163		usda/09163
F	dried apple	dried apple rings;apple rings	fruit	fruit,dried fruit	sulphites	vegan,vegetarian	100	243 0.93 0.32 0.052 - 0.013 0.093 65.89 57.19 - 8.7 0.0 0 87 450 14 1.40 0.0 31.76 1.10	- 86 usda/09011;diced 85 mill	-/- 6.4 usda/09011	usda/09011
F	dried pears		fruit	fruit,dried fruit	sulphites	vegan,vegetarian	100	262 1.87 0.63 0.035 - 0.132 0.148 69.70 62.20 - 7.5 0.0 0 6 533 34 2.10 0.0 26.69 1.11	- 180 usda/09259;halved 180 usda/09259	half/- 17.5 17.75 18 usda/09259	usda/09259
F	dried peaches		fruit	fruit,dried fruit	sulphites	vegan,vegetarian	100	239 3.61 0.76 0.082 - 0.278 0.367 61.33 41.74 - 8.2 0.0 0 7 996 28 4.06 0.0 31.80 2.50	- 160 usda/09246;halved 160 usda/09246	half/- 13 usda/09246	usda/09246
F	dried mango	dried mango slices	fruit	fruit,dried fruit	?	vegan,vegetarian	100	319 2.45 1.18 0.287 0.000 0.439 0.222 78.58 66.27 - 2.4 0.0 0 162 279 0 0.23 0.0 16.60 1.19			usda/09178
F	dried pineapple		fruit	fruit,dried fruit	?	vegan,vegetarian					
F	dried papaya		fruit	fruit,dried fruit	?	vegan,vegetarian					
F	banana chips	dried banana chips	fruit	fruit,dried fruit	?	vegan,vegetarian	100	519 2.30 33.60 28.970 - 1.950 0.630 58.40 35.34 - 7.7 0.0 0 6 536 18 1.25 0.0 4.30 1.40			usda/19400
F	dried banana		fruit	fruit,dried fruit		vegan,vegetarian	100	346 3.89 1.81 0.698 - 0.153 0.337 88.28 47.30 - 9.9 0.0 0 3 1491 22 1.15 0.0 3.00 3.02	- 99.2 99.6 100 usda/09041		usda/09041
F	goji berries	dried goji berries	fruit	fruit,dried fruit	?	vegan,vegetarian		349 14.26 0.39 0.000 0.000 - - 77.06 45.61 - 13.0 - 0 298 - 190 6.80 - 7.50 0.78	- 89.6 usda/09110		usda/09110
F	freeze-dried raspberries	freeze-dried raspberry powder	fruit	fruit,dried fruit		vegan,vegetarian					
F	freeze-dried strawberries	freeze-dried strawberry powder	fruit	fruit,dried fruit		vegan,vegetarian					
F	dried barberries	barberries;zereshk	fruit	fruit,dried fruit		vegan,vegetarian					
F	candied peel	mixed peel;mixed candied peel;candied mixed peel;candied citrus peel;chopped mixed peel;cut mixed peel	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14	- 130 147.5 165 practice		usda/09426/stand-in
F	candied orange peel	candied orange	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14	- 130 147.5 165 practice		usda/09426/stand-in
F	candied lemon peel		fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14			usda/09426/stand-in
F	citron	candied citron;candied citron peel	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14			usda/09426/stand-in
F	candied fruit	crystallised fruit;glacé fruit;tutti frutti	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14			usda/09426
F	glacé cherries	candied cherries;natural glacé cherries;natural-colour glacé cherries	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14	- 180 195 210 practice		usda/09426/stand-in
F	candied angelica	angelica	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14			usda/09426/stand-in
F	crystallised ginger	candied ginger;crystallized ginger	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14	- 150 170 190 practice		usda/09426/stand-in
F	stem ginger	stem ginger in syrup;preserved ginger;stem ginger ball;ginger in syrup	fruit	candied fruit	?	vegan,vegetarian	100	322 0.34 0.07 0.010 0.000 0.008 0.020 82.74 80.68 - 1.6 0.0 0 98 56 18 0.17 0.0 16.70 0.14		-/- 15 20 25 practice	usda/09426/stand-in
F	candied chestnuts	marrons glacés	fruit	candied fruit	?chestnut	vegan,vegetarian					
F	lemon juice	fresh lemon juice;freshly squeezed lemon juice;juice of lemon=fruit;lemon juice freshly squeezed	liquid	fruit juice		vegan,vegetarian	100	22 0.35 0.24 0.040 0.000 0.006 0.021 6.90 2.52 0.00 0.3 0.0 0 1 103 6 0.08 0.0 92.31 0.21	- 244 usda/09152	fruit/- 40 48 48 usda/09152,practice	usda/09152
F	bottled lemon juice	lemon juice from concentrate	liquid	fruit juice	sulphites	vegan,vegetarian	100	17 0.45 0.07 0.027 0.000 0.006 0.017 5.62 1.53 - 0.7 0.0 0 24 109 10 0.06 0.0 93.64 0.22	- 240 244 244 usda/09153		usda/09153
F	lime juice	fresh lime juice;freshly squeezed lime juice;juice of lime=fruit	liquid	fruit juice		vegan,vegetarian	100	25 0.42 0.07 0.008 0.000 0.008 0.023 8.42 1.69 0.00 0.4 0.0 0 2 117 14 0.09 0.0 90.79 0.31	- 242 244.2 246.4 usda/09160	fruit/- 25 44 44 usda/09160,practice	usda/09160
F	orange juice	fresh orange juice;freshly squeezed orange juice;juice of orange=fruit	liquid	fruit juice		vegan,vegetarian	100	45 0.70 0.20 0.024 0.000 0.036 0.040 10.40 8.40 - 0.2 0.0 0 1 200 11 0.20 0.0 88.30 0.40	- 248 usda/09206	fruit/- 45 86 86 usda/09206,practice	usda/09206
F	grapefruit juice		liquid	fruit juice		vegan,vegetarian	100	39 0.50 0.10 0.014 0.000 0.013 0.024 9.20 9.10 - 0.1 0.0 0 1 162 9 0.20 0.0 90.00 0.20	- 247 247.1 247.2 usda/09128	fruit/- 196 usda/09128	usda/09128
F	apple juice	cloudy apple juice;unsweetened apple juice;clear apple juice;pressed apple juice;fresh apple juice	liquid	fruit juice		vegan,vegetarian	100	46 0.10 0.13 0.022 0.000 0.006 0.039 11.30 9.62 - 0.2 0.0 0 4 101 8 0.12 0.0 88.24 0.23	- 248 usda/09016		usda/09016
F	red grape juice	grape juice;purple grape juice;unsweetened grape juice	liquid	fruit juice		vegan,vegetarian	100	60 0.37 0.13 0.025 0.000 0.003 0.022 14.77 14.20 - 0.2 0.0 0 5 104 11 0.25 0.0 84.51 0.22	- 252.8 252.9 253 usda/09135		usda/09135
F	white grape juice		liquid	fruit juice		vegan,vegetarian	100	60 0.37 0.13 0.025 0.000 0.003 0.022 14.77 14.20 - 0.2 0.0 0 5 104 11 0.25 0.0 84.51 0.22	- 252.8 252.9 253 usda/09135		usda/09135/stand-in
F	cranberry juice	unsweetened cranberry juice	liquid	fruit juice		vegan,vegetarian	100	46 0.39 0.13 0.010 0.000 0.023 0.070 12.20 12.10 - 0.1 0.0 0 2 77 8 0.25 0.0 87.13 0.15	- 252.8 252.9 253 usda/43382		usda/43382
F	cranberry juice drink	cranberry juice cocktail	liquid	fruit juice		vegan,vegetarian	100	54 0.00 0.10 0.009 0.000 0.019 0.059 13.52 11.87 - 0.0 0.0 0 2 14 3 0.10 0.0 86.17 0.20	- 252.8 252.9 253 usda/14242		usda/14242
F	pineapple juice	unsweetened pineapple juice	liquid	fruit juice		vegan,vegetarian	100	53 0.36 0.12 0.008 0.000 0.014 0.042 12.87 9.98 - 0.2 0.0 0 2 130 13 0.31 0.0 86.37 0.28	- 250 250.2 250.4 usda/09273		usda/09273
F	pomegranate juice		liquid	fruit juice		vegan,vegetarian	100	54 0.15 0.29 0.077 0.000 0.059 0.050 13.13 12.65 - 0.1 0.0 0 9 214 11 0.10 0.0 85.95 0.49	- 249 250.1 251.2 usda/09442		usda/09442
F	tomato juice		liquid	fruit juice		vegan,vegetarian	100	17 0.85 0.29 0.019 0.000 0.005 0.027 3.53 2.58 - 0.4 0.0 0 10 217 10 0.39 0.0 94.24 1.09	- 728/3 243 243.2 usda/11886		usda/11886
F	carrot juice		liquid	fruit juice		vegan,vegetarian	100	40 0.95 0.15 0.027 0.000 0.007 0.071 9.28 3.91 - 0.8 0.0 0 66 292 24 0.46 0.0 88.87 0.75	- 236 usda/11655		usda/11655
F	vegetable juice		liquid	fruit juice	?celery	vegan,vegetarian	100	22 0.93 0.31 0.088 0.000 0.060 0.076 3.87 2.84 0.30 0.5 0.0 0 169 185 14 0.28 0.0 94.09 0.80	- 728/3 1487/6 253 usda/11578		usda/11578
F	prune juice		liquid	fruit juice		vegan,vegetarian	100	71 0.61 0.03 0.003 0.000 0.021 0.007 17.45 16.45 - 1.0 0.0 0 4 276 12 1.18 0.0 81.24 0.68	- 256 usda/09294		usda/09294
F	tangerine juice	clementine juice;mandarin juice	liquid	fruit juice		vegan,vegetarian	100	43 0.50 0.20 0.024 0.000 0.036 0.040 10.10 9.90 - 0.2 0.0 0 1 178 18 0.20 0.0 88.90 0.30	- 247 247.1 247.2 usda/09221		usda/09221
F	passion fruit juice		liquid	fruit juice		vegan,vegetarian	100	51 0.39 0.05 0.004 0.000 0.006 0.029 13.60 13.40 - 0.2 0.0 0 6 278 4 0.24 0.0 85.62 0.34	- 247 247.1 247.2 usda/09232		usda/09232
F	peach nectar		liquid	fruit juice		vegan,vegetarian	100	54 0.27 0.02 0.002 0.000 0.008 0.011 13.92 13.32 - 0.6 0.0 0 7 40 5 0.19 0.0 85.64 0.15	- 248.8 248.9 249 usda/09251		usda/09251
F	apricot nectar		liquid	fruit juice		vegan,vegetarian	100	56 0.37 0.09 0.006 0.000 0.038 0.017 14.39 13.79 - 0.6 0.0 0 3 114 7 0.38 0.0 84.87 0.29	- 251 251.1 251.2 usda/09036		usda/09036
F	pear nectar	pear juice	liquid	fruit juice		vegan,vegetarian	100	60 0.11 0.01 0.001 0.000 0.003 0.003 15.76 15.16 - 0.6 0.0 0 4 13 5 0.26 0.0 84.01 0.10	- 249.6 249.8 250 usda/09262		usda/09262
F	mango nectar	mango juice;mango purée;mango pulp;mango puree	liquid	fruit juice		vegan,vegetarian	100	51 0.11 0.06 0.014 0.000 0.022 0.011 13.12 12.45 0.00 0.3 0.0 0 5 24 17 0.36 0.0 86.63 0.08	- 251 usda/09436		usda/09436
F	blackcurrant cordial	blackcurrant squash	liquid	fruit juice		vegan,vegetarian			- 260.24706015 277.9911778875 295.735295625 practice		
F	apple juice concentrate		liquid	fruit juice		vegan,vegetarian	100	166 0.51 0.37 0.060 0.000 0.015 0.108 41.00 38.83 - 0.4 0.0 0 25 448 20 0.91 0.0 57.00 1.12	- 280 mill		usda/09017
F	orange juice concentrate	frozen orange juice concentrate	liquid	fruit juice		vegan,vegetarian	100	148 2.40 0.25 0.059 0.000 0.050 0.063 35.19 29.68 0.00 1.0 0.0 0 7 629 38 0.33 0.0 60.57 1.60	- 262 263 264 usda/09214		usda/09214
F	verjuice	verjus	liquid	fruit juice		vegan,vegetarian					
F	apple purée	apple sauce;applesauce;unsweetened applesauce;unsweetened apple sauce;stewed apple;apple puree	fruit	fruit purée		vegan,vegetarian	100	42 0.17 0.10 0.008 0.000 0.002 0.014 11.27 9.39 0.00 1.1 0.0 0 2 74 4 0.23 0.0 88.22 0.24	- 244 249.5 255 usda/09019,mill		usda/09019
F	sweetened applesauce	sweetened apple sauce	fruit	fruit purée		vegan,vegetarian	100	68 0.16 0.17 0.030 0.000 0.007 0.054 17.49 14.67 - 1.2 0.0 0 2 75 3 0.12 0.0 81.98 0.21	- 246 usda/09020		usda/09020
F	apple butter		fruit	fruit purée		vegan,vegetarian	100	173 0.39 0.30 0.053 - 0.016 0.084 42.47 35.30 - 1.5 0.0 0 15 91 14 0.31 0.0 56.45 0.39	- 272 277 282 usda/19294		usda/19294
F	prune purée	prune puree	fruit	fruit purée		vegan,vegetarian	100	257 2.10 0.20 0.016 0.000 - - 65.10 39.00 - 3.3 - 0 23 852 31 2.80 - 30.00 2.60	- 288 usda/09423		usda/09423
F	raspberry purée	raspberry coulis;raspberry puree	fruit	fruit purée		vegan,vegetarian	96	52 1.20 0.65 0.019 0.000 0.064 0.375 11.94 4.42 0.00 6.5 0.0 0 1 151 25 0.69 0.0 85.75 0.46	- 230 240 250 practice		usda/09302/stand-in
F	cranberry sauce	cranberry jelly	fruit	fruit purée		vegan,vegetarian	100	159 0.90 0.15 0.007 0.000 0.007 0.031 40.40 31.75 - 1.1 0.0 0 5 28 3 0.41 0.0 58.45 0.10	- 277 usda/09081	slice/- 57 usda/09081	usda/09081
F	beef cheek	ox cheek;beef cheek trimmed	meat	meat,beef		raw-meat,animal,meat	100	128 21.75 4.48 1.860 0.231 2.320 0.300 0.16 0.00 - 0.0 0.0 64 80 367 13 2.12 0.1 72.51 1.11		-/- 300 375 450 practice	usda/23093/stand-in
F	stewing beef	stewing steak;braising steak;beef stew meat;beef for stew;diced beef;stew beef;chuck steak;beef chuck;diced stewing beef;casserole steak;braising beef;cubed beef;boneless beef chuck	meat	meat,beef		raw-meat,animal,meat	100	128 21.75 4.48 1.860 0.231 2.320 0.300 0.16 0.00 - 0.0 0.0 64 80 367 13 2.12 0.1 72.51 1.11			usda/23093
F	beef short rib	short ribs;beef short ribs bone-in;jacob's ladder	meat	meat,beef		raw-meat,animal,meat	93	235 17.48 18.33 7.979 1.207 9.206 0.726 0.00 0.00 - 0.0 0.0 75 78 277 12 2.24 0.1 63.84 0.84		-/- 250 400 432 usda/23128,practice	usda/23128
F	beef shin	shin of beef;beef shank;boneless beef shin	meat	meat,beef		raw-meat,animal,meat	60	128 21.75 3.85 1.280 - 1.760 0.150 0.00 - - 0.0 - 39 63 387 20 2.32 - 73.03 1.44			usda/13227
F	beef brisket	brisket;brisket of beef	meat	meat,beef		raw-meat,animal,meat	99	251 18.42 19.06 7.530 - 8.520 0.660 0.00 0.00 - 0.0 0.0 68 69 282 6 1.70 - 61.08 0.88			usda/13803
F	oxtail	ox tail	meat	meat,beef		raw-meat,animal,meat	93	235 17.48 18.33 7.979 1.207 9.206 0.726 0.00 0.00 - 0.0 0.0 75 78 277 12 2.24 0.1 63.84 0.84			usda/23128/stand-in
F	beef fillet	fillet of beef;beef tenderloin;fillet steak;tenderloin;filet mignon	meat	meat,beef		raw-meat,animal,meat	99	149 21.67 6.93 2.479 0.350 2.695 0.463 0.00 0.00 - 0.0 0.0 61 44 284 14 2.48 0.1 71.50 1.09			usda/23336
F	sirloin steak	beef sirloin;strip steak;new york strip steak;top loin steak	meat	meat,beef		raw-meat,animal,meat	91	163 22.43 8.17 3.478 0.473 3.941 0.480 0.00 0.00 - 0.0 0.0 61 45 273 15 1.83 0.1 68.75 1.00		-/- 267 usda/23339	usda/23339
F	rump steak	top sirloin;top sirloin steak;beef rump	meat	meat,beef		raw-meat,animal,meat	97	201 20.30 12.71 5.127 - 5.440 0.483 0.00 0.00 - 0.0 0.0 75 52 315 24 1.48 - 66.09 1.03		-/- 608 usda/13929	usda/13929
F	ribeye steak	rib-eye steak;rib eye;scotch fillet	meat	meat,beef		raw-meat,animal,meat	96	228 19.26 16.71 7.363 - 7.880 0.794 0.12 0.00 - 0.0 0.0 68 52 246 8 1.81 0.1 63.02 0.88		-/- 326 usda/23230	usda/23230
F	rib of beef	beef rib;rib roast;standing rib roast;prime rib;fore rib of beef	meat	meat,beef		raw-meat,animal,meat	84	306 16.53 26.10 10.760 - 11.240 0.940 0.00 - - 0.0 - 70 55 272 9 1.74 - 55.24 0.78			usda/13824
F	skirt steak	beef skirt	meat	meat,beef		raw-meat,animal,meat	99	187 20.38 11.71 4.626 0.628 5.431 0.548 0.00 0.00 - 0.0 0.0 65 64 262 6 1.71 0.1 67.25 0.92		-/- 382 usda/23217	usda/23217
F	flank steak	bavette steak;bavette	meat	meat,beef		raw-meat,animal,meat	100	155 21.22 7.17 2.978 - 2.924 0.277 0.00 0.00 - 0.0 0.0 65 54 328 25 1.55 - 70.73 1.00		-/- 188 usda/13970	usda/13970
F	topside of beef	beef topside;top round;top round roast;topside;silverside;silverside of beef;beef roasting joint;bottom round roast	meat	meat,beef		raw-meat,animal,meat	99	125 23.45 3.50 1.353 0.173 1.554 0.244 0.00 0.00 - 0.0 0.0 62 54 311 13 2.33 0.0 72.51 1.11		-/- 758 usda/23327	usda/23327
F	beef mince	minced beef;ground beef;beef minced;hamburger mince;ground chuck;80 % lean ground beef;80/20 ground beef;minced steak	meat	meat,beef		raw-meat,animal,meat,minced-meat	100	254 17.17 20.00 7.581 1.180 8.848 0.521 0.00 0.00 - 0.0 0.0 71 66 270 18 1.94 0.1 61.87 0.84			usda/23572
F	lean beef mince	extra-lean ground beef;lean ground beef;5 % fat beef mince;lean minced beef;95 % lean ground beef;extra-lean beef mince	meat	meat,beef		raw-meat,animal,meat,minced-meat	100	137 21.41 5.00 2.182 0.220 1.994 0.257 0.00 0.00 - 0.0 0.0 62 66 346 9 2.38 0.1 73.24 1.05			usda/23557
F	beef bones	marrow bones;beef marrow bones;bone marrow	meat	meat,beef		raw-meat,animal,meat					
F	beef liver	ox liver	meat	meat,offal		raw-meat,animal,meat,liver	100	135 20.36 3.63 1.233 0.170 0.479 0.465 3.89 0.00 - 0.0 0.0 275 69 313 5 4.90 1.2 70.81 1.31			usda/13325
F	beef kidney	ox kidney	meat	meat,offal		raw-meat,animal,meat	84	99 17.40 3.09 0.868 0.100 0.586 0.545 0.29 0.00 - 0.0 0.0 411 182 262 13 4.60 1.1 77.89 1.33			usda/13323
F	beef heart	ox heart	meat	meat,offal		raw-meat,animal,meat	71	112 17.72 3.94 1.383 0.180 1.137 0.546 0.14 0.00 - 0.0 0.0 124 98 287 7 4.31 - 77.11 1.10			usda/13321
F	beef tongue	ox tongue;tongue	meat	meat,offal		raw-meat,animal,meat	84	224 14.90 16.09 7.000 - 7.240 0.900 3.68 - - 0.0 0.0 87 69 315 6 2.95 - 64.53 0.80			usda/13339
F	tripe	beef tripe;honeycomb tripe	meat	meat,offal		raw-meat,animal,meat	100	85 12.07 3.69 1.291 0.150 1.533 0.180 0.00 0.00 - 0.0 0.0 122 97 67 69 0.59 0.0 84.16 0.55			usda/13341
F	sweetbreads	veal sweetbreads;calf's sweetbreads	meat	meat,offal		raw-meat,animal,meat	100	101 17.21 3.07 0.806 0.220 0.775 0.229 0.00 0.00 - 0.0 0.0 250 67 488 3 1.05 - 79.16 2.16			usda/17218
F	corned beef	tinned corned beef;canned corned beef	meat	meat,beef		animal,meat	100	250 27.10 14.93 6.180 - 5.960 0.630 0.00 0.00 - 0.0 0.0 86 897 136 12 2.08 0.2 57.72 2.90		slice/- 21 usda/13348	usda/13348
F	salt beef	corned beef brisket;raw corned beef	meat	meat,beef		raw-meat,animal,meat,curing	99	198 14.68 14.90 4.730 - 7.180 0.530 0.14 - - 0.0 - 54 1217 297 7 1.69 - 66.56 3.73			usda/13346
F	pastrami	beef pastrami	meat	meat,beef	?	animal,meat	100	147 21.80 5.82 2.681 - 2.118 0.145 0.36 0.10 - 0.0 0.0 68 1078 210 10 2.22 0.1 69.53 3.40		slice/- 28 usda/13355	usda/13355
F	dried beef	air-dried beef;bresaola	meat	meat,beef		animal,meat	100	153 31.10 1.94 0.950 - 0.840 0.070 2.76 2.70 - 0.0 0.0 79 2790 235 8 2.42 0.0 53.80 10.40		slice/- 2.8 usda/13350	usda/13350
F	veal	stewing veal;diced veal;veal shoulder;pie veal	meat	meat,veal		raw-meat,animal,meat	100	130 19.27 5.28 2.050 - 1.940 0.410 0.00 0.00 - 0.0 0.0 87 91 302 22 0.91 0.0 74.78 1.05			usda/17116
F	veal escalope	veal cutlet;veal schnitzel	meat	meat,veal		raw-meat,animal,meat	100	107 22.07 2.07 0.805 0.090 0.986 0.107 0.00 0.00 - 0.0 0.0 56 86 273 4 0.81 0.6 75.20 1.09		-/- 55 usda/17426	usda/17426
F	veal shin	osso buco;veal shank;osso bucco	meat	meat,veal		raw-meat,animal,meat	71	113 19.15 3.48 1.060 - 1.257 0.363 0.00 - - - - 75 84 314 20 0.76 - 76.92 1.04			usda/17276
F	minced veal	ground veal;veal mince	meat	meat,veal		raw-meat,animal,meat,minced-meat	100	197 18.58 13.06 5.108 0.696 6.159 0.732 0.00 0.00 - 0.0 0.0 49 103 198 12 1.37 1.3 66.16 0.93			usda/17142
F	veal bones		meat	meat,veal		raw-meat,animal,meat					
F	calf's liver	calves' liver;veal liver	meat	meat,offal		raw-meat,animal,meat,liver	100	140 19.93 4.85 1.560 0.215 0.968 0.829 2.91 0.00 - 0.0 0.0 334 77 308 5 6.40 - 70.89 1.42			usda/17202
F	leg of lamb	lamb leg;lamb leg joint;boneless leg of lamb;lamb leg steak	meat	meat,lamb		raw-meat,animal,meat	79	230 17.91 17.07 7.430 - 7.000 1.350 0.00 - - 0.0 - 69 56 249 9 1.66 - 64.32 0.94			usda/17011
F	lamb shoulder	shoulder of lamb;diced lamb;stewing lamb;lamb stew meat;diced lamb shoulder;boneless lamb shoulder;lamb neck;neck of lamb;lamb neck fillet;cubed lamb	meat	meat,lamb		raw-meat,animal,meat	79	264 16.58 21.45 9.280 - 8.790 1.710 0.00 0.00 - 0.0 0.0 72 61 230 16 1.50 0.1 61.39 0.89			usda/17035
F	lamb shank		meat	meat,lamb		raw-meat,animal,meat	48	201 18.91 13.38 5.830 - 5.490 1.060 0.00 - - 0.0 - 72 72 214 11 1.67 - 67.01 0.95		-/- 350 400 450 practice	usda/17007
F	lamb chop	loin chop;lamb loin chop;lamb cutlet;lamb loin	meat	meat,lamb		raw-meat,animal,meat	79	310 16.32 26.63 11.760 - 10.940 2.080 0.00 - - 0.0 - 74 56 214 15 1.61 - 56.55 0.84		-/- 90 120 150 practice	usda/17023
F	rack of lamb	lamb rack;lamb rib	meat	meat,lamb		raw-meat,animal,meat	73	372 14.52 34.39 15.160 - 14.130 2.690 0.00 - - 0.0 - 76 56 190 15 1.39 - 50.80 0.74			usda/17029
F	breast of lamb	lamb breast	meat	meat,lamb		raw-meat,animal,meat	73	372 14.52 34.39 15.160 - 14.130 2.690 0.00 - - 0.0 - 76 56 190 15 1.39 - 50.80 0.74			usda/17029/stand-in
F	lamb mince	minced lamb;ground lamb	meat	meat,lamb		raw-meat,animal,meat,minced-meat	100	282 16.56 23.41 10.190 - 9.600 1.850 0.00 0.00 - 0.0 0.0 73 59 222 16 1.55 0.1 59.47 0.87			usda/17224
F	lamb		meat	meat,lamb		raw-meat,animal,meat	77	267 16.88 21.59 9.470 - 8.860 1.700 0.00 - - 0.0 0.0 72 58 230 12 1.57 - 60.70 0.88			usda/17001
F	mutton	leg of mutton;diced mutton;shoulder of mutton	meat	meat,lamb		raw-meat,animal,meat	77	267 16.88 21.59 9.470 - 8.860 1.700 0.00 - - 0.0 0.0 72 58 230 12 1.57 - 60.70 0.88			usda/17001/stand-in
F	lamb's liver	lamb liver	meat	meat,offal		raw-meat,animal,meat,liver	100	139 20.38 5.02 1.940 - 1.050 0.750 1.78 - - 0.0 - 371 70 313 7 7.37 - 71.37 1.44			usda/17199
F	lamb's kidney	lamb kidney	meat	meat,offal		raw-meat,animal,meat	97	97 15.74 2.95 1.000 - 0.630 0.550 0.82 - - 0.0 - 337 156 277 13 6.38 - 79.23 1.26			usda/17195
F	goat meat	diced goat;kid meat	meat	meat,goat		raw-meat,animal,meat	100	109 20.60 2.31 0.710 - 1.030 0.170 0.00 - - 0.0 - 57 82 385 13 2.83 - 75.84 1.11			usda/17168
F	pork shoulder	shoulder of pork;boston butt;pork butt;diced pork;diced pork shoulder;boneless pork shoulder;neck end of pork;pork collar;hand of pork	meat	meat,pork		raw-meat,pork,animal,meat	75	236 17.18 17.99 6.240 - 8.010 1.920 0.00 0.00 - 0.0 0.0 71 65 302 15 1.05 1.7 64.02 0.88			usda/10070
F	pork belly	belly pork;belly of pork;pork belly slices=slice;belly pork slices=slice	meat	meat,pork		raw-meat,pork,animal,meat	93	518 9.34 53.01 19.330 - 24.700 5.650 0.00 0.00 - 0.0 0.0 72 32 185 5 0.52 - 36.74 0.49			usda/10005
F	pork loin	loin of pork;pork loin joint;boneless pork loin;pork loin roast;pork loin steak	meat	meat,pork		raw-meat,pork,animal,meat	78	198 19.74 12.58 4.360 - 5.610 1.340 0.00 0.00 - 0.0 0.0 63 50 356 18 0.79 0.5 66.92 0.96			usda/10020
F	pork chop	pork loin chop;pork cutlet;bone-in pork chop	meat	meat,pork		raw-meat,pork,animal,meat	75	170 20.71 9.03 2.993 0.092 3.548 1.190 0.00 0.00 - 0.0 0.0 69 55 343 19 0.63 0.5 69.70 0.96		-/- 199 usda/10036	usda/10036
F	pork tenderloin	pork fillet	meat	meat,pork		raw-meat,pork,animal,meat	95	120 20.65 3.53 1.181 0.036 1.355 0.562 0.00 0.00 - 0.0 0.0 65 52 393 6 0.97 0.3 74.97 1.01		-/- 350 425 500 practice	usda/10218
F	pork ribs	spare ribs;pork spare ribs;spareribs;baby back ribs;back ribs	meat	meat,pork		raw-meat,pork,animal,meat	70	277 15.47 23.40 7.529 0.222 8.542 3.953 0.00 0.00 - 0.0 0.0 80 81 242 15 0.91 2.3 59.75 0.67			usda/10088
F	leg of pork	pork leg;pork leg joint;fresh ham;pork steak;leg of pork joint	meat	meat,pork		raw-meat,pork,animal,meat	83	245 17.43 18.87 6.540 - 8.380 2.010 0.00 - - 0.0 0.0 73 47 315 5 0.85 0.5 62.47 0.88			usda/10008
F	pork mince	minced pork;ground pork	meat	meat,pork		raw-meat,pork,animal,meat,minced-meat	100	263 16.88 21.19 7.870 - 9.440 1.910 0.00 - - 0.0 - 72 56 287 14 0.88 - 61.06 0.87			usda/10219
F	lean pork mince	lean ground pork;lean minced pork	meat	meat,pork		raw-meat,pork,animal,meat,minced-meat	100	121 21.10 4.00 1.420 0.032 1.890 0.660 0.21 0.00 - 0.0 0.0 59 67 310 15 0.86 0.1 73.62 1.07			usda/10973
F	pork cheek		meat	meat,pork		raw-meat,pork,animal,meat	75	236 17.18 17.99 6.240 - 8.010 1.920 0.00 0.00 - 0.0 0.0 71 65 302 15 1.05 1.7 64.02 0.88			usda/10070/stand-in
F	pork jowl		meat	meat,pork		raw-meat,pork,animal,meat	100	655 6.38 69.61 25.260 - 32.890 8.110 0.00 0.00 - 0.0 0.0 90 25 148 4 0.42 - 22.19 0.32			usda/10105
F	pig's trotter	pork trotter;pig's foot;pork feet	meat	meat,pork		raw-meat,pork,animal,meat	71	212 23.16 12.59 3.570 0.000 6.289 1.092 0.00 0.00 - 0.0 0.0 88 132 63 70 0.58 - 64.99 0.68			usda/10102
F	pork skin	pork rind	meat	meat,pork		raw-meat,pork,animal,meat					
F	pig's liver	pork liver	meat	meat,offal		raw-meat,pork,animal,meat,liver	100	134 21.39 3.65 1.170 - 0.520 0.870 2.47 - - 0.0 0.0 301 87 273 9 23.30 - 71.06 1.44			usda/10110
F	pig's kidney	pork kidney	meat	meat,offal		raw-meat,pork,animal,meat	93	100 16.46 3.25 1.040 - 1.070 0.260 0.00 - - 0.0 - 319 121 229 9 4.89 - 80.06 1.17		-/- 233 usda/10106	usda/10106
F	ham hock	pork knuckle;smoked ham hock;gammon hock;pork hock	meat	meat,pork		raw-meat,pork,animal,meat				-/- 700 950 1200 practice	
F	bacon	streaky bacon;smoked streaky bacon;american bacon;bacon rasher=rasher;streaky bacon rasher=rasher;rasher of bacon=rasher;smoked bacon;unsmoked bacon;bacon slice=slice;thick-cut bacon;bacon lardons;lardons;smoked lardons;rasher bacon=rasher;rasher streaky bacon=rasher;unsmoked streaky bacon;smoked bacon lardons;bacon strip=slice	meat	meat,pork,cured meat		raw-meat,pork,animal,meat,curing	100	417 12.62 39.69 13.296 0.133 17.439 6.454 1.28 1.00 - 0.0 0.0 66 662 198 5 0.41 0.4 44.24 2.17		rasher/- 15 22.5 30 practice;slice/- 28 usda/10123;-/- 15 22.5 30 practice	usda/10123
F	back bacon	smoked back bacon;unsmoked back bacon;canadian bacon;back bacon rasher=rasher;rasher back bacon=rasher	meat	meat,pork,cured meat		raw-meat,pork,animal,meat,curing	100	110 20.31 2.62 0.900 0.007 1.090 0.467 1.34 0.90 - 0.0 0.0 48 751 683 6 0.44 0.1 72.34 3.38		rasher/- 25 32.5 40 practice;slice/- 28.5 usda/10130;-/- 25 32.5 40 practice	usda/10130
F	gammon	gammon joint;gammon steak;uncooked ham;raw gammon	meat	meat,pork,cured meat		raw-meat,pork,animal,meat,curing	82	246 18.49 18.52 6.620 - 8.700 1.640 0.06 0.00 - 0.0 0.0 56 1284 310 7 0.71 - 59.71 3.23	- 140 usda/10150		usda/10150
F	cooked ham	ham;sliced ham;boiled ham;ham slice=slice;smoked ham;roast ham;ham off the bone	meat	meat,pork,cured meat	?	pork,animal,meat	100	163 16.60 8.60 2.936 - 4.354 0.789 3.83 0.00 - 1.3 0.0 57 1143 287 24 1.02 0.7 67.27 3.70		slice/- 28 usda/07029	usda/07029
F	pancetta	pancetta cubes;diced pancetta;smoked pancetta	meat	meat,pork,cured meat	?	raw-meat,pork,animal,meat	100	417 12.62 39.69 13.296 0.133 17.439 6.454 1.28 1.00 - 0.0 0.0 66 662 198 5 0.41 0.4 44.24 2.17			usda/10123/stand-in
F	guanciale		meat	meat,pork,cured meat		raw-meat,pork,animal,meat	100	655 6.38 69.61 25.260 - 32.890 8.110 0.00 0.00 - 0.0 0.0 90 25 148 4 0.42 - 22.19 0.32			usda/10105/stand-in
F	prosciutto	parma ham;dry-cured ham;serrano ham;air-dried ham;jamón;parma ham slice=slice;speck	meat	meat,pork,cured meat		pork,animal,meat		266 26 18 6.1 - - - 0.3 0 - - - - 1760			memory
F	salt pork		meat	meat,pork,cured meat		raw-meat,pork,animal,meat,curing	100	748 5.05 80.50 29.380 - 37.940 9.400 0.00 0.00 - 0.0 0.0 86 2684 66 6 0.44 0.2 11.00 3.65			usda/10165
F	pork sausage	sausage;breakfast sausage;fresh pork sausage	meat	meat,sausage	?	animal,meat,raw-meat,pork	100	288 15.39 24.80 7.570 0.101 9.844 4.432 0.93 0.93 - 0.0 0.0 70 739 307 8 1.02 1.4 56.59 2.54		link/- 25 usda/07063;-/- 50 60 70 practice	usda/07063
F	pork sausagemeat	sausage meat;sausagemeat;bulk sausage	meat	meat,sausage	?	animal,meat,raw-meat,pork,minced-meat	100	288 15.39 24.80 7.570 0.101 9.844 4.432 0.93 0.93 - 0.0 0.0 70 739 307 8 1.02 1.4 56.59 2.54		link/- 25 usda/07063	usda/07063
F	Italian sausage	fresh italian sausage;hot italian sausage;sweet italian sausage;salsiccia	meat	meat,sausage	?	animal,meat,raw-meat,pork	100	346 14.25 31.33 11.270 - 14.340 4.030 0.65 - - 0.0 - 76 731 253 18 1.18 - 51.08 2.70		link/- 91 102 113 usda/07036	usda/07036
F	beef sausage		meat	meat,sausage	?	animal,meat,raw-meat					
F	lamb sausage	merguez;merguez sausage	meat	meat,sausage	?	animal,meat,raw-meat					
F	chicken sausage		meat	meat,sausage	?	animal,meat,raw-meat,poultry					
F	bratwurst		meat	meat,sausage	?	animal,meat,raw-meat,pork					
F	chorizo	cured chorizo;spanish chorizo;chorizo sausage;cooking chorizo;chorizo ring	meat	meat,sausage	?	animal,meat,pork	100	455 24.10 38.27 14.380 - 18.400 3.460 1.86 0.00 - 0.0 0.0 88 1235 398 8 1.59 1.5 31.85 3.92		link/- 60 usda/07019	usda/07019
F	black pudding	blood sausage;blutwurst;morcilla	meat	meat,sausage	?	animal,meat,pork	100	379 14.60 34.50 13.400 - 15.900 3.460 1.29 1.29 - 0.0 0.0 120 680 38 6 6.40 1.3 47.30 2.31		slice/- 25 usda/07005	usda/07005
F	white pudding		meat	meat,sausage	?	animal,meat,pork					
F	haggis		meat	meat,sausage	?	animal,meat					
F	frankfurter	hot dog;hotdog sausage;frank	meat	meat,sausage	?	animal,meat	100	290 10.26 25.76 7.666 - 11.386 4.404 4.17 - - 0.0 0.0 77 1090 152 99 1.09 - 56.31 3.50			usda/07950
F	smoked sausage	kielbasa;polish sausage;smoked pork sausage	meat	meat,sausage	?	animal,meat,pork	100	309 11.98 28.23 9.313 0.231 11.212 3.626 0.94 0.94 - 0.0 0.0 61 827 483 11 0.59 1.1 56.49 3.11		link/- 16 42 68 usda/07074	usda/07074
F	salami	dry salami;milano salami;hard salami;genoa salami	meat	meat,sausage	?	animal,meat,pork	100	407 22.58 33.72 11.890 - 16.000 3.740 1.60 - - 0.0 0.0 79 2260 378 13 1.30 - 36.18 5.92		slice/- 10 usda/07071	usda/07071
F	pepperoni	sliced pepperoni	meat	meat,sausage	?	animal,meat,pork	100	504 19.25 46.28 17.708 1.527 20.770 4.458 1.18 0.00 - 0.0 0.0 97 1582 274 19 1.33 1.3 28.55 4.74		-/- 2 usda/07057	usda/07057
F	mortadella		meat	meat,sausage	?	animal,meat,pork	100	311 16.37 25.39 9.510 - 11.380 3.120 3.05 0.00 - 0.0 0.0 56 1246 163 18 1.40 1.0 52.30 2.89		slice/- 15 usda/07050	usda/07050
F	'nduja		meat	meat,sausage	?	animal,meat,pork					
F	liver sausage	liverwurst;liver pâté	meat	meat,sausage	?	animal,meat,pork,liver	100	326 14.10 28.50 10.600 - 13.340 2.600 2.20 - - 0.0 - 158 860 170 26 6.40 - 52.10 3.10		slice/- 18 usda/07041	usda/07041
F	pâté	chicken liver pâté	meat	meat,sausage	?	animal,meat,liver	100	201 13.45 13.10 4.000 - 5.280 2.460 6.55 0.00 - 0.0 0.0 391 386 95 10 9.19 0.0 65.64 1.26	- 208 usda/07053		usda/07053
F	whole chicken	chicken;roasting chicken;oven-ready chicken;free-range chicken;broiler chicken	meat	meat,poultry		raw-meat,poultry,animal,meat	68	215 18.60 15.06 4.310 0.097 6.240 3.230 0.00 0.00 - 0.0 0.0 75 70 189 11 0.90 0.2 65.99 0.79		-/large 1700 2000 2300 practice;-/medium 1400 1550 1700 practice;-/small 1200 1300 1400 practice;-/- 276 1110 2300 usda/05006,practice	usda/05006
F	chicken breast	skinless chicken breast;boneless skinless chicken breast;chicken breast fillet;skinless boneless chicken breast;skinless chicken breast fillet;chicken fillet;boneless chicken breast;chicken breast half;diced chicken breast	meat	meat,poultry		raw-meat,poultry,animal,meat	100	120 22.50 2.62 0.563 0.007 0.689 0.424 0.00 0.00 - 0.0 0.0 73 45 334 5 0.37 0.0 73.90 1.13		-/- 120 225 272 usda/05062,practice	usda/05062
F	chicken breast with skin	skin-on chicken breast;bone-in chicken breast;chicken breast on the bone	meat	meat,poultry		raw-meat,poultry,animal,meat	80	172 20.85 9.25 2.660 0.105 3.820 1.960 0.00 0.00 - 0.0 0.0 64 63 220 11 0.74 0.4 69.46 1.01		-/- 174 232 290 usda/05057	usda/05057
F	chicken thigh	bone-in chicken thigh;skin-on chicken thigh;chicken thigh on the bone;chicken thigh with skin	meat	meat,poultry		raw-meat,poultry,animal,meat	100	221 16.52 16.61 4.524 0.085 6.940 3.467 0.25 0.00 - 0.0 0.0 98 81 204 7 0.68 0.1 66.47 0.81		-/- 93 193 193 usda/05091,practice	usda/05091
F	chicken thigh fillet	skinless boneless chicken thigh;boneless skinless chicken thigh;boneless chicken thigh;skinless chicken thigh;skinless chicken thigh fillet	meat	meat,poultry		raw-meat,poultry,animal,meat	100	121 19.66 4.12 1.097 0.020 1.497 0.940 0.00 0.00 - 0.0 0.0 94 95 242 7 0.81 0.0 76.22 0.95		-/- 60 115 149 usda/05096,practice	usda/05096
F	chicken drumstick	drumstick	meat	meat,poultry		raw-meat,poultry,animal,meat	34	161 18.08 9.20 2.459 0.047 3.719 1.965 0.11 0.00 - 0.0 0.0 92 106 211 8 0.71 0.1 72.46 0.86		-/- 130 131.5 133 usda/05066	usda/05066
F	chicken leg	chicken leg quarter;whole chicken leg	meat	meat,poultry		raw-meat,poultry,animal,meat	73	214 16.37 15.95 4.366 0.060 6.619 3.352 0.17 0.00 - 0.0 0.0 93 84 203 9 0.69 0.1 67.30 0.81		-/- 344 usda/05075	usda/05075
F	chicken wing		meat	meat,poultry		raw-meat,poultry,animal,meat	62	191 17.52 12.85 3.535 0.061 5.422 2.498 0.00 0.00 - 0.0 0.0 111 84 187 11 0.46 0.1 69.19 0.74		-/- 107 usda/05100	usda/05100
F	chicken pieces	jointed chicken;chicken portions;mixed chicken pieces;chicken joints	meat	meat,poultry		raw-meat,poultry,animal,meat	68	215 18.60 15.06 4.310 0.097 6.240 3.230 0.00 0.00 - 0.0 0.0 75 70 189 11 0.90 0.2 65.99 0.79			usda/05006/stand-in
F	chicken mince	minced chicken;ground chicken	meat	meat,poultry		raw-meat,poultry,animal,meat,minced-meat	100	143 17.44 8.10 2.301 0.065 3.611 1.508 0.04 0.00 - 0.0 0.0 86 60 522 6 0.82 - 73.24 1.17			usda/05332
F	chicken liver	chicken livers trimmed	meat	meat,poultry		raw-meat,poultry,animal,meat,liver	100	119 16.92 4.83 1.563 0.065 1.249 1.306 0.73 0.00 - 0.0 0.0 345 71 230 8 8.99 0.0 76.46 1.06		-/- 44 usda/05027	usda/05027
F	chicken carcass	chicken bones;chicken backs	meat	meat,poultry		raw-meat,poultry,animal,meat					
F	chicken skin		meat	meat,poultry		raw-meat,poultry,animal,meat	100	349 13.33 32.35 9.080 0.349 13.540 6.810 0.00 0.00 - 0.0 0.0 109 63 103 11 1.08 0.6 54.22 0.41		-/- 47 102.5 158 usda/05015	usda/05015
F	chicken feet		meat	meat,poultry		raw-meat,poultry,animal,meat					
F	chicken heart		meat	meat,poultry		raw-meat,poultry,animal,meat	100	153 15.55 9.33 2.660 - 2.370 2.710 0.71 - - 0.0 - 136 74 176 12 5.96 - 73.56 0.85		-/- 1.8 3.95 6.1 usda/05025	usda/05025
F	cooked chicken	roast chicken;leftover roast chicken;cooked chicken breast;shredded cooked chicken;leftover chicken;rotisserie chicken	meat	meat,poultry		poultry,animal,meat	100	190 28.93 7.41 2.040 - 2.660 1.690 0.00 0.00 - 0.0 0.0 89 86 243 15 1.21 0.1 63.79 1.02	- 139.2 140 140 usda/05013;chopped 140 usda/05013;diced 140 usda/05013	-/- 146 usda/05013	usda/05013
F	turkey	whole turkey;turkey crown	meat	meat,poultry		raw-meat,poultry,animal,meat	71	143 21.64 5.64 1.461 0.062 1.826 1.466 0.13 0.07 0.07 0.0 0.0 72 112 224 11 0.86 0.3 72.69 0.98		-/- 5002 usda/05165	usda/05165
F	turkey breast	turkey breast fillet;turkey steak;turkey escalope	meat	meat,poultry		raw-meat,poultry,animal,meat	100	114 23.66 1.48 0.289 0.013 0.264 0.258 0.14 0.05 0.09 0.0 0.0 57 113 242 11 0.73 0.1 74.89 1.04		-/- 1769 usda/05219	usda/05219
F	turkey thigh	turkey leg;turkey drumstick	meat	meat,poultry		raw-meat,poultry,animal,meat	83	144 19.54 6.72 2.060 - 2.060 1.830 0.00 - - 0.0 - 71 74 273 17 1.72 - 72.69 0.89		-/- 105 460.5 816 usda/05193	usda/05193
F	turkey mince	minced turkey;ground turkey	meat	meat,poultry		raw-meat,poultry,animal,meat,minced-meat	100	148 19.66 7.66 2.024 0.103 2.635 2.205 0.00 0.00 - 0.0 0.0 69 58 237 19 1.09 0.4 72.36 1.00			usda/05305
F	turkey bacon		meat	meat,poultry	?	raw-meat,poultry,animal,meat	100	226 15.94 16.93 4.520 0.184 6.223 4.699 1.89 - - - 0.0 86 1069 349 80 1.40 - 61.83 3.41			usda/07254
F	duck	whole duck;oven-ready duck	meat	meat,poultry		raw-meat,poultry,animal,meat	72	404 11.49 39.34 13.220 - 18.690 5.080 0.00 0.00 - 0.0 0.0 76 63 209 11 2.40 0.7 48.50 0.68		-/-@ 1800 2100 2400 practice;-/- 287 777.5 1268 usda/05139	usda/05139
F	duck breast	magret	meat	meat,poultry		raw-meat,poultry,animal,meat	100	135 18.28 5.95 2.320 - 1.540 0.750 0.94 0.00 - 0.0 0.0 77 74 271 11 2.40 0.1 73.77 1.06		-/- 137 205 606 usda/05141,practice	usda/05141/stand-in
F	duck leg	confit duck leg	meat	meat,poultry		raw-meat,poultry,animal,meat	72	404 11.49 39.34 13.220 - 18.690 5.080 0.00 0.00 - 0.0 0.0 76 63 209 11 2.40 0.7 48.50 0.68		-/- 200 283.5 1268 usda/05139,practice	usda/05139/stand-in
F	duck liver	foie gras	meat	meat,poultry		raw-meat,poultry,animal,meat,liver	100	136 18.74 4.64 1.440 - 0.710 0.630 3.53 - - 0.0 - 515 140 230 11 30.53 - 71.78 1.32		-/- 10 27 44 usda/05143	usda/05143
F	goose	whole goose	meat	meat,poultry		raw-meat,poultry,animal,meat	81	371 15.86 33.62 9.780 - 17.770 3.760 0.00 - - 0.0 0.0 80 73 308 12 2.50 - 49.66 0.87		-/- 320 1479 2638 usda/05146	usda/05146
F	guinea fowl		meat	meat,poultry		raw-meat,poultry,animal,meat	83	158 23.40 6.45 1.770 - 2.430 1.410 0.00 - - 0.0 0.0 74 67 193 11 0.84 - 68.90 1.25		-/- 359 524.5 690 usda/05151	usda/05151
F	poussin	cornish game hen;spring chicken	meat	meat,poultry		raw-meat,poultry,animal,meat	61	200 17.15 14.02 3.890 - 6.160 2.770 0.00 0.00 - 0.0 0.0 101 61 236 11 0.78 - 68.18 0.80		-/- 336 usda/05307	usda/05307
F	quail	whole quail	meat	meat,poultry		raw-meat,poultry,animal,meat	90	192 19.63 12.05 3.380 - 4.180 2.980 0.00 - - 0.0 0.0 76 53 216 13 3.97 - 69.65 0.90		-/- 109 257 405 usda/05157	usda/05157
F	pigeon	wood pigeon;squab;pigeon breast	meat	meat,poultry		raw-meat,poultry,animal,meat	77	294 18.47 23.80 8.430 - 9.720 3.070 0.00 - - 0.0 - 95 54 199 12 3.54 - 56.60 1.40		-/- 199 248 297 usda/05160	usda/05160
F	ostrich steak	ostrich	meat	meat,poultry		raw-meat,poultry,animal,meat	100	123 22.07 3.19 1.170 - 1.230 0.750 0.00 0.00 - 0.0 0.0 80 86 320 6 4.88 - 74.50 0.73			usda/05654
F	pheasant	pheasant breast;brace of pheasants	meat	meat,game		raw-meat,animal,meat,poultry	86	181 22.70 9.29 2.700 - 4.320 1.180 0.00 - - 0.0 0.0 71 40 243 12 1.15 - 67.77 1.27		-/- 371 585.5 800 usda/05153	usda/05153
F	partridge	grouse	meat	meat,game		raw-meat,animal,meat,poultry	86	181 22.70 9.29 2.700 - 4.320 1.180 0.00 - - 0.0 0.0 71 40 243 12 1.15 - 67.77 1.27		-/- 250 300 350 practice	usda/05153/stand-in
F	venison	diced venison;venison haunch;venison steak;venison loin;haunch of venison	meat	meat,game		raw-meat,animal,meat	100	120 22.96 2.42 0.950 - 0.670 0.470 0.00 0.00 - 0.0 0.0 85 51 318 5 3.40 - 73.57 1.16			usda/17164
F	venison mince	minced venison;ground venison	meat	meat,game		raw-meat,animal,meat,minced-meat	100	157 21.78 7.13 3.361 - 1.344 0.394 0.00 0.00 - 0.0 0.0 80 75 330 11 2.92 0.0 71.15 0.88			usda/17343
F	rabbit	diced rabbit;whole rabbit;jointed rabbit;rabbit legs	meat	meat,game		raw-meat,animal,meat	100	136 20.05 5.55 1.660 - 1.500 1.080 0.00 - - 0.0 - 57 41 330 13 1.57 - 72.82 0.72			usda/17177
F	hare	jugged hare meat	meat	meat,game		raw-meat,animal,meat	100	114 21.79 2.32 0.690 - 0.630 0.450 0.00 - - 0.0 - 81 50 378 12 3.20 - 74.51 1.12			usda/17180/stand-in
F	wild boar	diced wild boar	meat	meat,game		raw-meat,animal,meat	100	122 21.51 3.33 0.990 - 1.300 0.480 0.00 - - 0.0 - - - - 12 - - 72.54 0.97			usda/17158
F	bison	ground bison	meat	meat,game		raw-meat,animal,meat	100	223 18.67 15.93 6.802 - 6.222 0.749 0.00 0.00 - 0.0 0.0 70 66 307 11 2.60 - 64.25 0.88			usda/17330
F	kangaroo		meat	meat,game		raw-meat,animal,meat					
F	horse meat	horsemeat	meat	meat,game		raw-meat,animal,meat	100	133 21.39 4.60 1.440 - 1.610 0.650 0.00 - - 0.0 - 52 53 360 6 3.82 - 72.63 0.99			usda/17170
F	salmon	salmon fillet;fresh salmon;skinless salmon fillet;salmon side;side of salmon;atlantic salmon;farmed salmon;salmon steak;skin-on salmon fillet	fish	fish,oily fish	fish	raw-fish,animal,fish		208 20.42 13.42 3.050 - 3.770 3.886 0.00 0.00 - 0.0 0.0 55 59 363 9 0.34 11.0 64.89 1.13		fillet/- 110 198 396 usda/15236,practice;-/- 110 154 198 practice	usda/15236
F	wild salmon	sockeye salmon;wild salmon fillet;coho salmon	fish	fish,oily fish	fish	raw-fish,animal,fish	100	131 22.25 4.69 0.814 0.019 1.371 1.115 0.00 0.00 0.00 0.0 0.0 51 78 367 9 0.43 14.1 72.54 1.26		fillet/- 396 usda/15085;-/- 396 usda/15085	usda/15085
F	smoked salmon	cold-smoked salmon;lox;smoked salmon slice=slice;smoked salmon trimmings	fish	fish,oily fish	fish	animal,fish,ready-to-eat-fish	100	117 18.28 4.32 0.929 - 2.023 0.995 0.00 0.00 - 0.0 0.0 23 672 175 11 0.85 17.1 72.00 2.62			usda/15077
F	hot-smoked salmon		fish	fish,oily fish	fish	animal,fish					
F	tinned salmon	canned salmon;tinned red salmon;canned red salmon;tinned sockeye salmon	fish	fish,oily fish	fish	animal,fish	100	167 23.59 7.39 1.440 0.040 2.494 1.783 0.00 0.00 0.00 0.0 0.0 79 408 314 232 0.65 21.0 68.07 2.47			usda/15087
F	tinned pink salmon	canned pink salmon	fish	fish,oily fish	fish	animal,fish	100	138 23.10 5.02 0.895 0.027 1.211 1.507 0.00 0.00 - 0.0 0.0 83 381 333 283 0.77 14.5 70.71 2.50			usda/15260
F	trout	rainbow trout;trout fillet;whole trout	fish	fish,oily fish	fish	raw-fish,animal,fish	100	141 19.94 6.18 1.383 0.047 1.979 1.507 0.00 0.00 - 0.0 0.0 59 51 377 25 0.31 15.9 73.80 1.21		fillet/- 79 usda/15240;-/- 79 usda/15240	usda/15240
F	smoked trout	smoked trout fillet;hot-smoked trout	fish	fish,oily fish	fish	animal,fish					
F	mackerel	mackerel fillet;fresh mackerel;whole mackerel;atlantic mackerel	fish	fish,oily fish	fish	raw-fish,animal,fish	100	205 18.60 13.89 3.257 - 5.456 3.350 0.00 0.00 - 0.0 0.0 70 90 314 12 1.63 16.1 63.55 1.35		fillet/- 112 usda/15046;-/- 112 usda/15046	usda/15046
F	smoked mackerel	smoked mackerel fillet;peppered smoked mackerel	fish	fish,oily fish	fish	animal,fish		354 19 31 6.3 - - - 0 0 - - - - 750			memory
F	tinned mackerel	canned mackerel	fish	fish,oily fish	fish	animal,fish	100	156 23.19 6.30 1.857 - 2.225 1.651 0.00 0.00 - 0.0 0.0 79 379 194 241 2.04 7.3 69.17 1.73	- 190 usda/15048		usda/15048
F	herring	fresh herring;herring fillet	fish	fish,oily fish	fish	raw-fish,animal,fish	100	158 17.96 9.04 2.040 - 3.736 2.133 0.00 0.00 - 0.0 0.0 60 90 327 57 1.10 4.2 72.05 1.46		fillet/- 184 usda/15039;-/- 184 usda/15039	usda/15039
F	kipper	kipper fillet;kippered herring	fish	fish,oily fish	fish	animal,fish	100	217 24.58 12.37 2.791 - 5.112 2.919 0.00 0.00 - 0.0 0.0 82 918 447 84 1.51 2.2 59.70 1.94		fillet/large 65 usda/15042;fillet/medium 40 usda/15042;fillet/small 20 usda/15042;fillet/- 20 40 65 usda/15042;-/large 65 usda/15042;-/medium 40 usda/15042;-/small 20 usda/15042;-/- 20 40 65 usda/15042	usda/15042
F	pickled herring	rollmop;soused herring;bismarck herring	fish	fish,oily fish	?fish	animal,fish	100	262 14.19 18.00 2.381 - 11.947 1.679 9.64 7.71 - 0.0 0.0 13 870 69 77 1.22 2.8 55.22 2.95	- 140 usda/15041	-/- 15 usda/15041	usda/15041
F	sardine	fresh sardine;pilchard	fish	fish,oily fish	fish	raw-fish,animal,fish	100	158 17.96 9.04 2.040 - 3.736 2.133 0.00 0.00 - 0.0 0.0 60 90 327 57 1.10 4.2 72.05 1.46		-/- 50 70 90 practice	usda/15039/stand-in
F	tinned sardines	canned sardines;tinned sardines in oil;sardines in oil;tinned pilchards	fish	fish,oily fish	fish	animal,fish	100	208 24.62 11.45 1.528 - 3.869 5.148 0.00 0.00 - 0.0 0.0 142 307 397 382 2.92 4.8 59.61 3.38	- 149 usda/15088	-/small 12 usda/15088;-/- 12 usda/15088	usda/15088
F	anchovy fillet	anchovy;anchovies in oil;tinned anchovies;canned anchovies;anchovies in olive oil;salted anchovies;anchovy fillets in oil	fish	fish,oily fish	fish	animal,fish	100	210 28.89 9.71 2.203 - 3.770 2.562 0.00 0.00 - 0.0 0.0 85 3668 544 232 4.63 1.7 50.30 11.10		-/- 3 4 4 usda/15002,practice	usda/15002
F	anchovy paste	anchovy essence	fish	fish,oily fish	fish	animal,fish					
F	fresh anchovy		fish	fish,oily fish	fish	raw-fish,animal,fish	100	131 20.35 4.84 1.282 - 1.182 1.637 0.00 0.00 - 0.0 0.0 60 104 383 147 3.25 - 73.37 1.44			usda/15001
F	whitebait	sprats	fish	fish,oily fish	fish	raw-fish,animal,fish					
F	fresh tuna	tuna steak;tuna fillet;yellowfin tuna;ahi tuna;sushi-grade tuna	fish	fish,oily fish	fish	raw-fish,animal,fish	100	109 24.40 0.49 0.172 0.016 0.116 0.147 0.00 0.00 - 0.0 0.0 39 45 441 4 0.77 1.7 74.03 1.64			usda/15127
F	tinned tuna in oil	canned tuna in oil;tuna in oil;tinned tuna in olive oil;tuna in olive oil;canned tuna in olive oil	fish	fish,oily fish	fish	animal,fish	100	198 29.13 8.21 1.534 - 2.949 2.885 0.00 0.00 - 0.0 0.0 18 416 207 13 1.39 6.7 59.83 2.76	- 146 usda/15119		usda/15119
F	tinned tuna in water	canned tuna in water;tuna in water;tinned tuna in brine;tuna in brine;tuna in spring water;tinned tuna in spring water	fish	fish,oily fish	fish	animal,fish	100	86 19.44 0.96 0.211 0.002 0.107 0.277 0.00 0.00 - 0.0 0.0 36 247 179 17 1.63 1.2 78.14 0.95	- 154 usda/15121		usda/15121
F	swordfish	swordfish steak	fish	fish,oily fish	fish	raw-fish,animal,fish	100	144 19.66 6.65 1.602 0.047 2.971 1.147 0.00 0.00 - 0.0 0.0 66 81 418 5 0.38 13.9 73.38 1.44		-/- 136 usda/15110	usda/15110
F	eel		fish	fish,oily fish	fish	raw-fish,animal,fish	100	184 18.44 11.66 2.358 - 7.190 0.947 0.00 0.00 - 0.0 0.0 126 51 272 20 0.50 23.3 68.26 1.41		fillet/- 204 usda/15025;-/- 204 usda/15025	usda/15025
F	smoked eel		fish	fish,oily fish	fish	animal,fish					
F	cod	cod fillet;cod loin;skinless cod fillet;atlantic cod;fresh cod;cod steak	fish	fish,white fish	fish	raw-fish,animal,fish	100	82 17.81 0.67 0.131 - 0.094 0.231 0.00 0.00 - 0.0 0.0 43 54 413 16 0.38 0.9 81.22 1.16		fillet/- 231 usda/15015;-/- 231 usda/15015	usda/15015
F	salt cod	bacalhau;baccalà;dried salt cod;bacalao	fish	fish,white fish	fish	animal,fish	100	290 62.82 2.37 0.462 - 0.342 0.804 0.00 0.00 - 0.0 0.0 152 7027 1458 160 2.50 4.0 16.14 18.67		-/- 80 usda/15018	usda/15018
F	haddock	haddock fillet;skinless haddock fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	74 16.32 0.45 0.091 0.004 0.061 0.166 0.00 0.00 - 0.0 0.0 54 213 286 11 0.17 0.5 83.38 1.28		fillet/- 193 usda/15033;-/- 193 usda/15033	usda/15033
F	smoked haddock	undyed smoked haddock;smoked haddock fillet;finnan haddie;arbroath smokie	fish	fish,white fish	fish	animal,fish	100	116 25.23 0.96 0.173 - 0.157 0.321 0.00 0.00 - 0.0 0.0 77 763 415 49 1.40 0.8 71.48 1.62			usda/15035
F	pollock	pollack;coley;saithe;alaska pollock	fish	fish,white fish	fish	raw-fish,animal,fish	100	92 19.44 0.98 0.135 - 0.112 0.483 0.00 0.00 - 0.0 0.0 71 86 356 60 0.46 1.0 78.18 1.41		fillet/- 386 usda/15065;-/- 386 usda/15065	usda/15065
F	hake	hake fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	90 18.31 1.31 0.247 - 0.279 0.422 0.00 0.00 - 0.0 0.0 67 72 249 48 0.34 1.4 80.27 1.30		fillet/- 92 usda/15132;-/- 92 usda/15132	usda/15132/stand-in
F	whiting		fish	fish,white fish	fish	raw-fish,animal,fish	100	90 18.31 1.31 0.247 - 0.279 0.422 0.00 0.00 - 0.0 0.0 67 72 249 48 0.34 1.4 80.27 1.30		fillet/- 92 usda/15132;-/- 92 usda/15132	usda/15132
F	plaice	plaice fillet;flounder;lemon sole;sole;dover sole;sole fillet;flounder fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	70 12.41 1.93 0.441 0.011 0.535 0.374 0.00 0.00 0.00 0.0 0.0 45 296 160 21 0.18 2.8 84.63 1.22		fillet/- 163 usda/15028;-/- 163 usda/15028	usda/15028
F	halibut	halibut fillet;halibut steak	fish	fish,white fish	fish	raw-fish,animal,fish	100	91 18.56 1.33 0.292 - 0.471 0.290 0.00 0.00 0.00 0.0 0.0 49 68 435 7 0.16 4.7 80.34 1.29		fillet/- 408 usda/15036;-/- 408 usda/15036	usda/15036
F	turbot		fish	fish,white fish	fish	raw-fish,animal,fish	100	95 16.05 2.95 0.750 - 0.610 0.880 0.00 - - 0.0 - 48 150 238 18 0.36 - 76.95 2.10		fillet/- 408 usda/15129;-/- 408 usda/15129	usda/15129
F	sea bass	sea bass fillet;seabass;whole sea bass;branzino	fish	fish,white fish	fish	raw-fish,animal,fish	100	97 18.43 2.00 0.511 - 0.424 0.743 0.00 0.00 - 0.0 0.0 41 68 256 10 0.29 5.6 78.27 1.09		fillet/- 129 usda/15091;-/- 129 usda/15091	usda/15091
F	sea bream	bream;gilthead bream;sea bream fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	97 18.43 2.00 0.511 - 0.424 0.743 0.00 0.00 - 0.0 0.0 41 68 256 10 0.29 5.6 78.27 1.09		-/- 300 400 500 practice	usda/15091/stand-in
F	red snapper	snapper;snapper fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	100 20.51 1.34 0.285 - 0.251 0.459 0.00 0.00 - 0.0 0.0 37 64 417 32 0.18 10.2 76.87 1.31		fillet/- 218 usda/15101;-/- 218 usda/15101	usda/15101
F	red mullet		fish	fish,white fish	fish	raw-fish,animal,fish	100	117 19.35 3.79 1.116 - 1.078 0.715 0.00 0.00 - 0.0 0.0 49 65 357 41 1.02 1.5 77.01 1.20		fillet/- 119 usda/15055;-/- 119 usda/15055	usda/15055/stand-in
F	monkfish	monkfish tail;monkfish fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	76 14.48 1.52 0.340 - 0.240 0.610 0.00 - - 0.0 - 25 18 400 8 0.32 - 83.24 1.21			usda/15054
F	tilapia	tilapia fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	96 20.08 1.70 0.585 - 0.498 0.363 0.00 0.00 - 0.0 0.0 50 52 302 10 0.56 3.1 78.08 0.93		fillet/- 116 usda/15261;-/- 116 usda/15261	usda/15261
F	catfish	catfish fillet	fish	fish,white fish	fish	raw-fish,animal,fish	100	119 15.23 5.94 1.310 0.052 2.573 1.119 0.00 0.00 0.00 0.0 0.0 55 98 302 8 0.23 0.2 79.06 1.05		fillet/- 159 usda/15234;-/- 159 usda/15234	usda/15234
F	perch		fish	fish,white fish	fish	raw-fish,animal,fish	100	91 19.39 0.92 0.185 - 0.152 0.368 0.00 0.00 - 0.0 0.0 90 62 269 80 0.90 3.0 79.13 1.24		fillet/- 60 usda/15060;-/- 60 usda/15060	usda/15060
F	pike		fish	fish,white fish	fish	raw-fish,animal,fish	100	88 19.26 0.69 0.118 - 0.157 0.202 0.00 0.00 - 0.0 0.0 39 39 259 57 0.55 2.5 78.92 1.20		fillet/- 396 usda/15062;-/- 396 usda/15062	usda/15062
F	carp		fish	fish,white fish	fish	raw-fish,animal,fish	100	127 17.83 5.60 1.083 - 2.328 1.431 0.00 0.00 - 0.0 0.0 66 49 333 41 1.24 24.7 76.31 1.46		fillet/- 218 usda/15008;-/- 218 usda/15008	usda/15008
F	skate	ray wing;skate wing	fish	fish,white fish	fish	raw-fish,animal,fish					
F	gurnard		fish	fish,white fish	fish	raw-fish,animal,fish	100	97 18.43 2.00 0.511 - 0.424 0.743 0.00 0.00 - 0.0 0.0 41 68 256 10 0.29 5.6 78.27 1.09		fillet/- 129 usda/15091;-/- 129 usda/15091	usda/15091/stand-in
F	mahi-mahi		fish	fish,white fish	fish	raw-fish,animal,fish	100	85 18.50 0.70 0.188 - 0.121 0.165 0.00 - - 0.0 0.0 73 88 416 15 1.13 - 77.55 2.10		fillet/- 204 usda/15023;-/- 204 usda/15023	usda/15023
F	grouper		fish	fish,white fish	fish	raw-fish,animal,fish	100	92 19.38 1.02 0.233 - 0.202 0.321 0.00 - - 0.0 0.0 37 53 483 27 0.89 - 79.22 1.17		fillet/- 259 usda/15031;-/- 259 usda/15031	usda/15031
F	white fish fillet	white fish;firm white fish;white fish fillets skinless;firm white fish fillet;fish pie mix	fish	fish,white fish	fish	raw-fish,animal,fish	100	82 17.81 0.67 0.131 - 0.094 0.231 0.00 0.00 - 0.0 0.0 43 54 413 16 0.38 0.9 81.22 1.16		-/- 120 150 180 practice	usda/15015/stand-in
F	fish fingers	fish sticks	fish	fish,white fish	?fish,wheat	animal,fish					
F	surimi	crab sticks;seafood sticks;imitation crab	fish	fish,white fish	?fish	animal,fish	100	95 7.62 0.46 0.216 0.008 0.275 0.143 15.00 6.25 3.50 0.5 0.0 20 529 90 13 0.39 0.0 74.66 2.26			usda/15138
F	caviar	lumpfish caviar;lumpfish roe	fish	roe	fish	raw-fish,animal,fish	100	264 24.60 17.90 4.060 - 4.631 7.405 4.00 0.00 - 0.0 0.0 588 1500 181 275 11.88 2.9 47.50 6.50	- 256 usda/15012		usda/15012
F	salmon roe	keta;salmon caviar	fish	roe	fish	raw-fish,animal,fish					
F	smoked cod's roe	cod's roe;cod roe	fish	roe	fish	raw-fish,animal,fish					
F	bottarga		fish	roe	fish	raw-fish,animal,fish					
F	prawn	raw prawn;king prawn;tiger prawn;raw king prawn;shrimp;raw shrimp;jumbo shrimp;peeled raw prawn;peeled prawn;large shrimp;peeled and deveined shrimp	fish	shellfish,crustacean	crustaceans	raw-fish,shellfish,animal,fish	87	85 20.10 0.51 0.101 0.004 0.086 0.152 0.00 - - - - 161 119 264 64 0.52 - 78.45 1.23		-/- 6 13 20 practice	usda/15270
F	cooked prawn	peeled cooked prawn;cooked shrimp;cooked peeled prawn;cooked king prawn;north atlantic prawn;cold-water prawn	fish	shellfish,crustacean	crustaceans	shellfish,animal,fish	100	119 22.78 1.70 0.521 0.035 0.361 0.590 1.52 0.00 0.00 0.0 0.0 211 947 170 91 0.32 0.1 71.56 3.11		-/- 4 7 10 practice	usda/15151
F	brown shrimp	potted shrimp	fish	shellfish,crustacean	crustaceans	shellfish,animal,fish					
F	langoustine	scampi;dublin bay prawn	fish	shellfish,crustacean	crustaceans	raw-fish,shellfish,animal,fish	100	77 16.52 0.75 0.181 0.011 0.220 0.296 0.00 0.00 0.00 0.0 0.0 127 423 200 84 0.26 0.0 80.95 1.88			usda/15147/stand-in
F	crab	whole crab;dressed crab;brown crab	fish	shellfish,crustacean	crustaceans	shellfish,animal,fish	100	87 18.06 1.08 0.222 - 0.192 0.387 0.04 - - 0.0 0.0 78 293 329 89 0.74 - 79.02 1.81		-/- 21 usda/15139	usda/15139
F	white crab meat	crab meat;crabmeat;lump crab meat;fresh crab meat;cooked crab meat;canned crab;tinned crab	fish	shellfish,crustacean	crustaceans	shellfish,animal,fish	100	83 17.88 0.74 0.201 0.014 0.129 0.258 0.00 0.00 0.00 0.0 0.0 97 563 259 91 0.50 0.0 79.69 1.96	- 135 usda/15141		usda/15141
F	brown crab meat		fish	shellfish,crustacean	crustaceans	shellfish,animal,fish					
F	lobster	whole lobster;lobster tail;cooked lobster	fish	shellfish,crustacean	crustaceans	raw-fish,shellfish,animal,fish	100	77 16.52 0.75 0.181 0.011 0.220 0.296 0.00 0.00 0.00 0.0 0.0 127 423 200 84 0.26 0.0 80.95 1.88		-/- 150 usda/15147	usda/15147
F	crayfish	crayfish tails;crawfish	fish	shellfish,crustacean	crustaceans	raw-fish,shellfish,animal,fish	100	77 15.97 0.95 0.159 - 0.174 0.293 0.00 0.00 - 0.0 0.0 114 58 302 27 0.84 0.0 82.24 1.34		-/- 3.375 usda/15145	usda/15145
F	dried shrimp	dried prawns	fish	shellfish,crustacean	crustaceans	shellfish,animal,fish					
F	shrimp paste	belacan;blachan;terasi	fish	shellfish,crustacean	?crustaceans	shellfish,animal,fish					
F	mussel	live mussels;mussels in shell;fresh mussels;blue mussel	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	86 11.90 2.24 0.425 - 0.507 0.606 3.69 0.00 - 0.0 0.0 28 286 320 26 3.95 0.0 80.58 1.59	- 150 usda/15164	-/large 20 usda/15164;-/medium 16 usda/15164;-/small 10 usda/15164;-/- 10 16 20 usda/15164	usda/15164
F	cooked mussels	cooked mussel meat	fish	shellfish,mollusc	molluscs	shellfish,animal,fish	100	172 23.80 4.48 0.850 - 1.014 1.212 7.39 - - 0.0 - 56 369 268 33 6.72 - 61.15 3.18			usda/15165
F	clam	fresh clams;palourde clams;littleneck clam;vongole;clams in shell	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	86 14.67 0.96 0.187 0.015 0.120 0.192 3.57 0.00 1.40 0.0 0.0 30 601 46 39 1.62 0.0 78.98 1.82	- 227 usda/15157	-/large 20 usda/15157;-/medium 14.5 usda/15157;-/small 9 usda/15157;-/- 9 14.5 20 usda/15157	usda/15157
F	tinned clams	canned clams	fish	shellfish,mollusc	molluscs	shellfish,animal,fish	100	142 24.25 1.59 0.309 0.024 0.198 0.318 5.90 0.00 2.31 0.0 0.0 50 112 628 65 2.68 0.1 65.26 3.00	- 160 usda/15160		usda/15160
F	cockles		fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	86 14.67 0.96 0.187 0.015 0.120 0.192 3.57 0.00 1.40 0.0 0.0 30 601 46 39 1.62 0.0 78.98 1.82	- 227 usda/15157	-/large 20 usda/15157;-/medium 14.5 usda/15157;-/small 9 usda/15157;-/- 9 14.5 20 usda/15157	usda/15157/stand-in
F	oyster	fresh oyster;rock oyster;native oyster;shucked oyster	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	81 9.45 2.30 0.510 - 0.358 0.894 4.95 - - 0.0 0.0 50 106 168 8 5.11 - 82.06 1.23		-/medium 50 usda/15171;-/- 50 usda/15171	usda/15171
F	scallop	king scallop;sea scallop;fresh scallop;queen scallop;bay scallop;shucked scallop	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	69 12.06 0.49 0.128 0.005 0.048 0.130 3.18 0.00 2.17 0.0 0.0 24 392 205 6 0.38 0.0 82.53 1.74		-/- 15 27.5 40 practice	usda/15172
F	squid	calamari;squid tubes;baby squid;prepared squid	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	92 15.58 1.38 0.358 - 0.107 0.524 3.08 0.00 - 0.0 0.0 233 44 246 32 0.68 0.0 78.55 1.41			usda/15175
F	octopus	baby octopus	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	82 14.91 1.04 0.227 - 0.162 0.239 2.20 0.00 - 0.0 0.0 48 230 350 53 5.30 0.0 80.25 1.60			usda/15166
F	cuttlefish		fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	79 16.24 0.70 0.118 - 0.081 0.134 0.82 - - 0.0 - 112 372 354 90 6.02 - 80.56 1.68			usda/15163
F	squid ink	cuttlefish ink	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish					
F	whelks	winkles	fish	shellfish,mollusc	molluscs	raw-fish,shellfish,animal,fish	100	137 23.84 0.40 0.031 - 0.028 0.023 7.76 0.00 - 0.0 0.0 65 206 347 57 5.03 0.0 66.00 2.00			usda/15177
F	snails	escargots	fish	snail	molluscs	raw-fish,shellfish,animal,fish	100	90 16.10 1.40 0.361 - 0.259 0.252 2.00 0.00 - 0.0 0.0 50 70 382 10 3.50 0.0 79.20 1.30			usda/90560
F	water	cold water;hot water;warm water;boiling water;tap water;filtered water;lukewarm water;iced water;ice-cold water;ice water;tepid water;cool water;just-boiled water;freshly boiled water;hand-hot water;spring water;water from the tap	liquid	water		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 3 1 3 0.00 0.0 99.90 0.10	- 227 236.8 236.8 usda/14429,mill		usda/14429
F	ice	ice cubes;crushed ice	liquid	water		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 3 1 3 0.00 0.0 99.90 0.10		-/- 20 25 30 practice	usda/14429/stand-in
F	sparkling water	soda water;carbonated water;club soda;fizzy water;seltzer	liquid	water		vegan,vegetarian	100	0 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 0.0 0 21 2 5 0.01 0.0 99.90 0.10	- 236.8 usda/14121		usda/14121
F	beef stock	beef broth;hot beef stock;fresh beef stock;brown beef stock;dark beef stock;bone broth;beef bone broth	liquid	stock	?	animal,meat	100	13 1.97 0.09 0.035 - 0.043 0.005 1.20 0.54 - 0.0 0.0 0 198 185 8 0.27 0.0 95.89 0.70	- 240 usda/06170		usda/06170
F	chicken stock	chicken broth;hot chicken stock;fresh chicken stock;brown chicken stock;poultry stock	liquid	stock	?	animal,meat,poultry	100	36 2.52 1.20 0.321 - 0.582 0.213 3.53 1.58 - 0.0 0.0 3 143 105 3 0.21 0.0 92.15 0.63	- 240 usda/06172		usda/06172
F	turkey stock		liquid	stock	?	animal,meat,poultry	100	36 2.52 1.20 0.321 - 0.582 0.213 3.53 1.58 - 0.0 0.0 3 143 105 3 0.21 0.0 92.15 0.63	- 240 usda/06172		usda/06172/stand-in
F	veal stock		liquid	stock	?	animal,meat	100	13 1.97 0.09 0.035 - 0.043 0.005 1.20 0.54 - 0.0 0.0 0 198 185 8 0.27 0.0 95.89 0.70	- 240 usda/06170		usda/06170/stand-in
F	lamb stock		liquid	stock	?	animal,meat	100	13 1.97 0.09 0.035 - 0.043 0.005 1.20 0.54 - 0.0 0.0 0 198 185 8 0.27 0.0 95.89 0.70	- 240 usda/06170		usda/06170/stand-in
F	game stock		liquid	stock	?	animal,meat	100	13 1.97 0.09 0.035 - 0.043 0.005 1.20 0.54 - 0.0 0.0 0 198 185 8 0.27 0.0 95.89 0.70	- 240 usda/06170		usda/06170/stand-in
F	fish stock	fish fumet;fish broth	liquid	stock	?fish	animal,fish	100	16 2.26 0.81 0.203 - 0.236 0.138 0.00 0.00 - 0.0 0.0 1 156 144 3 0.01 0.0 96.60 0.74	- 233 usda/06174		usda/06174
F	shellfish stock	prawn stock;lobster stock	liquid	stock	?crustaceans	animal,fish	100	16 2.26 0.81 0.203 - 0.236 0.138 0.00 0.00 - 0.0 0.0 1 156 144 3 0.01 0.0 96.60 0.74	- 233 usda/06174		usda/06174/stand-in
F	vegetable stock	vegetable broth;hot vegetable stock	liquid	stock	?	vegan,vegetarian	100	5 0.24 0.07 0.028 0.000 0.005 0.004 0.93 0.55 0.00 0.0 0.0 0 296 19 3 0.06 0.0 98.05 0.71	- 221 usda/06700		usda/06700
F	mushroom stock	mushroom broth	liquid	stock	?	vegan,vegetarian	100	5 0.24 0.07 0.028 0.000 0.005 0.004 0.93 0.55 0.00 0.0 0.0 0 296 19 3 0.06 0.0 98.05 0.71	- 221 usda/06700		usda/06700/stand-in
F	dashi		liquid	stock	?				- 236.5882365 238.954118865 241.32000123 practice		
F	bean cooking water	bean broth;chickpea cooking water	liquid	stock		vegan,vegetarian	100	47 1.80 3.20 1.174 0.000 1.536 0.340 2.80 0.00 - 0.1 0.0 4 2 408 13 1.96 0.0 91.50 0.70	- 240 usda/43125		usda/43125/stand-in
F	pasta water	pasta cooking water	liquid	stock	?wheat				- 236.5882365 238.954118865 241.32000123 practice		
F	ham stock		liquid	stock	?	animal,meat,pork			- 236.5882365 238.954118865 241.32000123 practice		
F	beef stock cube	beef bouillon cube;beef bouillon;beef stock powder		stock cube	?	animal	100	170 17.30 4.00 1.990 - 1.670 0.160 16.10 14.51 - 0.0 0.0 4 24000 403 60 2.23 0.0 3.30 59.30		cube/- 3.6 usda/06076;-/- 8 10 12 practice	usda/06076
F	chicken stock cube	chicken bouillon cube;chicken bouillon powder;chicken stock powder;chicken bouillon		stock cube	?	animal	100	198 14.60 4.70 1.200 - 1.920 1.620 23.50 0.00 - 0.0 - 13 24000 374 190 1.87 - 2.50 54.70		cube/- 4.8 usda/06081;-/- 8 10 12 practice	usda/06081
F	vegetable stock cube	vegetable bouillon powder;vegetable stock powder;bouillon powder;vegetable bouillon;vegetable bouillon cube		stock cube	?					-/- 8 10 12 practice	
F	stock pot concentrate	demi-glace;glace de viande		stock cube	?						
F	gravy granules	gravy powder;instant gravy		stock cube	?						
F	cider vinegar	apple cider vinegar;apple vinegar	liquid	vinegar	?	vegan,vegetarian	100	21 0.00 0.00 0.000 0.000 0.000 0.000 0.93 0.40 - 0.0 0.0 0 5 73 7 0.20 0.0 93.81 0.17	- 238.4 239 240 usda/02048		usda/02048
F	white vinegar	distilled vinegar;distilled white vinegar;spirit vinegar;distilled malt vinegar;pickling vinegar	liquid	vinegar		vegan,vegetarian	100	18 0.00 0.00 0.000 0.000 0.000 0.000 0.04 0.04 - 0.0 0.0 0 2 2 6 0.03 0.0 94.78 0.02	- 238 238 240 usda/02053		usda/02053
F	red wine vinegar		liquid	vinegar	sulphites		100	19 0.04 0.00 0.000 0.000 - - 0.27 0.00 - 0.0 - - 8 39 6 0.45 - 94.47 0.17	- 238.4 239 240 usda/02068		usda/02068
F	white wine vinegar	champagne vinegar	liquid	vinegar	sulphites		100	19 0.04 0.00 0.000 0.000 - - 0.27 0.00 - 0.0 - - 8 39 6 0.45 - 94.47 0.17	- 236.5882365 239 241.32000123 usda/02068,practice		usda/02068/stand-in
F	sherry vinegar		liquid	vinegar	sulphites		100	19 0.04 0.00 0.000 0.000 - - 0.27 0.00 - 0.0 - - 8 39 6 0.45 - 94.47 0.17	- 236.5882365 239 241.32000123 usda/02068,practice		usda/02068/stand-in
F	balsamic vinegar	balsamic;aged balsamic vinegar	liquid	vinegar	sulphites		100	88 0.49 0.00 0.000 0.000 - - 17.03 14.95 - - - - 23 112 27 0.72 - 76.45 0.37	- 254.4 255 256 usda/02069		usda/02069
F	white balsamic vinegar		liquid	vinegar	sulphites		100	88 0.49 0.00 0.000 0.000 - - 17.03 14.95 - - - - 23 112 27 0.72 - 76.45 0.37	- 254.4 255 256 usda/02069		usda/02069/stand-in
F	malt vinegar	brown malt vinegar	liquid	vinegar	barley	vegan,vegetarian	100	21 0.00 0.00 0.000 0.000 0.000 0.000 0.93 0.40 - 0.0 0.0 0 5 73 7 0.20 0.0 93.81 0.17	- 236.5882365 239 241.32000123 usda/02048,practice		usda/02048/stand-in
F	rice vinegar	rice wine vinegar;japanese rice vinegar;seasoned rice vinegar;brown rice vinegar	liquid	vinegar		vegan,vegetarian	100	19 0.04 0.00 0.000 0.000 - - 0.27 0.00 - 0.0 - - 8 39 6 0.45 - 94.47 0.17	- 236.5882365 239 241.32000123 usda/02068,practice		usda/02068/stand-in
F	black vinegar	chinkiang vinegar;black rice vinegar	liquid	vinegar	?	vegan,vegetarian			- 236.5882365 242.5029424125 248.417648325 practice		
F	tarragon vinegar		liquid	vinegar	sulphites		100	19 0.04 0.00 0.000 0.000 - - 0.27 0.00 - 0.0 - - 8 39 6 0.45 - 94.47 0.17	- 238.4 239 240 usda/02068		usda/02068/stand-in
F	raspberry vinegar	fruit vinegar	liquid	vinegar	?				- 236.5882365 242.5029424125 248.417648325 practice		
F	coconut vinegar		liquid	vinegar		vegan,vegetarian	100	19 0.04 0.00 0.000 0.000 - - 0.27 0.00 - 0.0 - - 8 39 6 0.45 - 94.47 0.17	- 238.4 239 240 usda/02068		usda/02068/stand-in
F	umeboshi vinegar		liquid	vinegar		vegan,vegetarian			- 236.5882365 242.5029424125 248.417648325 practice		
F	red wine	dry red wine;full-bodied red wine;bottle of red wine;burgundy;claret;red cooking wine;robust red wine	liquid	wine	sulphites	alcohol	100	85 0.07 0.00 0.000 0.000 0.000 0.000 2.61 0.62 - 0.0 10.6 0 4 127 8 0.46 0.0 86.49 0.28	- 235.2 usda/14096		usda/14096
F	white wine	dry white wine;medium white wine;crisp dry white wine;bottle of white wine;medium-dry white wine;white cooking wine	liquid	wine	sulphites	alcohol	100	82 0.07 0.00 0.000 0.000 0.000 0.000 2.60 0.96 - 0.0 10.3 0 5 71 9 0.27 0.0 86.86 0.20	- 235.2 usda/14106		usda/14106
F	rosé wine	rosé;dry rosé wine	liquid	wine	sulphites	alcohol	100	83 0.36 0.00 0.000 - 0.000 0.000 3.80 3.80 - 0.0 9.6 0 5 59 10 0.20 0.0 86.40 0.16	- 242.4 usda/14253		usda/14253
F	sparkling wine	prosecco;cava;champagne;dry sparkling wine;crémant	liquid	wine	sulphites	alcohol	100	82 0.07 0.00 0.000 0.000 0.000 0.000 2.60 0.96 - 0.0 10.3 0 5 71 9 0.27 0.0 86.86 0.20	- 234.222354135 235.2 236.5882365 usda/14106,practice		usda/14106/stand-in
F	sweet wine	dessert wine;sweet white wine;muscat;sauternes	liquid	wine	sulphites	alcohol	100	160 0.20 0.00 0.000 0.000 0.000 0.000 13.69 7.78 - 0.0 15.3 0 9 92 8 0.24 0.0 70.51 0.30	- 236 usda/14057		usda/14057
F	port	ruby port;tawny port;red port;port wine	liquid	wine	sulphites	alcohol	100	160 0.20 0.00 0.000 0.000 0.000 0.000 13.69 7.78 - 0.0 15.3 0 9 92 8 0.24 0.0 70.51 0.30	- 236 usda/14057		usda/14057/stand-in
F	sherry	dry sherry;fino sherry;medium sherry;amontillado;amontillado sherry;cooking sherry;pale dry sherry;oloroso sherry	liquid	wine	sulphites	alcohol	100	152 0.20 0.00 0.000 0.000 0.000 0.000 11.67 1.09 - 0.0 15.3 0 9 92 8 0.24 - 72.53 0.30	- 236 usda/14536		usda/14536/stand-in
F	sweet sherry	cream sherry;pedro ximénez;pedro ximénez sherry	liquid	wine	sulphites	alcohol	100	160 0.20 0.00 0.000 0.000 0.000 0.000 13.69 7.78 - 0.0 15.3 0 9 92 8 0.24 0.0 70.51 0.30	- 236 usda/14057		usda/14057/stand-in
F	Madeira	madeira wine	liquid	wine	sulphites	alcohol	100	160 0.20 0.00 0.000 0.000 0.000 0.000 13.69 7.78 - 0.0 15.3 0 9 92 8 0.24 0.0 70.51 0.30	- 236 usda/14057		usda/14057/stand-in
F	Marsala	marsala wine;sweet marsala;dry marsala	liquid	wine	sulphites	alcohol	100	160 0.20 0.00 0.000 0.000 0.000 0.000 13.69 7.78 - 0.0 15.3 0 9 92 8 0.24 0.0 70.51 0.30	- 236 usda/14057		usda/14057/stand-in
F	vermouth	dry vermouth;dry white vermouth;white vermouth;extra-dry vermouth	liquid	wine	sulphites	alcohol	100	152 0.20 0.00 0.000 0.000 0.000 0.000 11.67 1.09 - 0.0 15.3 0 9 92 8 0.24 - 72.53 0.30	- 236 usda/14536		usda/14536/stand-in
F	sweet vermouth	red vermouth;rosso vermouth	liquid	wine	sulphites	alcohol	100	160 0.20 0.00 0.000 0.000 0.000 0.000 13.69 7.78 - 0.0 15.3 0 9 92 8 0.24 0.0 70.51 0.30	- 236 usda/14057		usda/14057/stand-in
F	mulled wine		liquid	wine	sulphites	alcohol			- 234.222354135 241.32000123 248.417648325 practice		
F	non-alcoholic wine	alcohol-free wine;dealcoholised wine	liquid	wine	sulphites		100	6 0.50 0.00 0.000 0.000 0.000 0.000 1.10 1.10 - 0.0 0.0 0 7 88 9 0.40 0.0 98.20 0.20	- 232 usda/14553		usda/14553
F	rice wine	shaoxing wine;chinese rice wine;shaohsing rice wine;chinese cooking wine;shaoxing rice wine	liquid	wine	?wheat	alcohol	100	134 0.50 0.00 0.000 0.000 0.000 0.000 5.00 0.00 - 0.0 16.1 0 2 25 5 0.10 0.0 78.40 0.00	- 232.8 usda/43479		usda/43479/stand-in
F	sake	japanese rice wine;cooking sake	liquid	wine		alcohol	100	134 0.50 0.00 0.000 0.000 0.000 0.000 5.00 0.00 - 0.0 16.1 0 2 25 5 0.10 0.0 78.40 0.00	- 232.8 usda/43479		usda/43479
F	mirin		liquid,sugar	wine		alcohol		241 0.3 0 - - - - 43 43 - - 9.5 - - - - - - 47	- 260.24706015 268.5276484275 276.808236705 practice		memory
F	mead	honey wine	liquid	wine	sulphites	alcohol,honey			- 236.5882365 248.417648325 260.24706015 practice		
F	beer	lager;pale lager;blonde beer;pilsner;light-coloured beer	liquid	beer	?barley	alcohol	100	43 0.46 0.00 0.000 0.000 0.000 0.000 3.55 0.00 0.00 0.0 3.9 0 4 27 4 0.02 0.0 91.96 0.16	- 237.6 usda/14003		usda/14003
F	ale	brown ale;pale ale;best bitter;dark ale;amber ale	liquid	beer	?barley	alcohol	100	43 0.46 0.00 0.000 0.000 0.000 0.000 3.55 0.00 0.00 0.0 3.9 0 4 27 4 0.02 0.0 91.96 0.16	- 237.6 usda/14003		usda/14003/stand-in
F	stout	porter;dark beer;dry stout;milk stout	liquid	beer	?barley	alcohol	100	43 0.46 0.00 0.000 0.000 0.000 0.000 3.55 0.00 0.00 0.0 3.9 0 4 27 4 0.02 0.0 91.96 0.16	- 237.6 usda/14003		usda/14003/stand-in
F	wheat beer	white beer;weissbier	liquid	beer	?wheat,barley	alcohol	100	43 0.46 0.00 0.000 0.000 0.000 0.000 3.55 0.00 0.00 0.0 3.9 0 4 27 4 0.02 0.0 91.96 0.16	- 237.6 usda/14003		usda/14003/stand-in
F	alcohol-free beer	non-alcoholic beer	liquid	beer	?barley		100	37 0.21 0.12 0.024 0.000 0.015 0.056 8.05 8.05 - 0.0 0.3 0 13 8 7 0.06 0.0 91.15 0.12	- 236.8 236.9 237 usda/14305		usda/14305
F	dry cider	hard cider;medium cider;alcoholic cider;sweet cider;strong cider;farmhouse cider	liquid	cider	sulphites	alcohol		36 0 0 - - - - 2.6 2.6 - - 3.8 - - - - - - 92.5	- 234.222354135 238.954118865 243.685883595 practice		memory
F	perry	pear cider	liquid	cider	sulphites	alcohol		40 0 0 - - - - 3 3 - - 3.8 - - - - - - 92	- 236.5882365 238.954118865 241.32000123 practice		memory
F	brandy	cognac;armagnac;cooking brandy	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	250 0.00 0.00 0.000 0.000 0.000 0.000 0.10 0.00 - 0.0 36.0 0 1 2 0 0.04 0.0 63.90 0.01	- 222.4 usda/14550		usda/14550/stand-in
F	calvados	apple brandy	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 2 0 0.04 0.0 66.60 0.01	- 222.4 usda/14037		usda/14037/stand-in
F	kirsch	kirschwasser	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 2 0 0.04 0.0 66.60 0.01	- 222.4 usda/14037		usda/14037/stand-in
F	rum	dark rum;white rum;light rum;gold rum;spiced rum;golden rum	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 2 0 0.12 0.0 66.60 0.01	- 222.4 223.2 224 usda/14050		usda/14050
F	whisky	whiskey;bourbon;scotch;scotch whisky;bourbon whiskey;irish whiskey;rye whiskey	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	250 0.00 0.00 0.000 0.000 0.000 0.000 0.10 0.10 - 0.0 36.0 0 0 1 0 0.02 - 63.90 0.00	- 222.4 usda/14052		usda/14052
F	vodka		liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 1 0 0.01 - 66.60 0.01	- 222.4 223.2 224 usda/14051		usda/14051
F	gin	dry gin	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	263 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 37.9 0 2 0 0 0.00 0.0 62.10 0.00	- 222.4 usda/14049		usda/14049
F	tequila	mezcal	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 2 0 0.04 0.0 66.60 0.01	- 222.4 usda/14037		usda/14037/stand-in
F	grappa	marc;eau-de-vie;fruit brandy;schnapps	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 2 0 0.04 0.0 66.60 0.01	- 222.4 usda/14037		usda/14037/stand-in
F	aquavit	akvavit	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 2 0 0.04 0.0 66.60 0.01	- 222.4 usda/14037		usda/14037/stand-in
F	ouzo	pastis;arak;raki;absinthe	liquid,spirit	spirit		alcohol,vegan,vegetarian	100	250 0.00 0.00 0.000 0.000 0.000 0.000 0.10 0.00 - 0.0 36.0 0 1 2 0 0.04 0.0 63.90 0.01	- 222.4 usda/14550		usda/14550/stand-in
F	neutral spirit		liquid,spirit	spirit		alcohol,vegan,vegetarian	100	231 0.00 0.00 0.000 0.000 0.000 0.000 0.00 0.00 - 0.0 33.4 0 1 2 0 0.04 0.0 66.60 0.01	- 222.4 usda/14037		usda/14037/stand-in
F	orange liqueur	triple sec;curaçao;orange-flavoured liqueur	liquid,spirit	liqueur		alcohol		321 0 0 - - - - 25 25 - - 31.6	- 236.5882365 250.78353069 264.97882488 practice		memory
F	coffee liqueur		liquid,spirit	liqueur	?	alcohol	100	336 0.10 0.30 0.106 0.000 0.022 0.105 46.80 38.30 - 0.0 21.7 0 8 30 1 0.06 0.0 31.00 0.10	- 278.4 usda/14414		usda/14414
F	cream liqueur	irish cream;irish cream liqueur;coffee cream liqueur	liquid,spirit	liqueur	?milk	alcohol,animal	100	327 2.80 15.70 9.664 - 4.458 0.669 20.90 19.76 - 0.0 13.8 58 92 32 16 0.13 0.0 46.50 0.40	- 248.8 3746/15 752/3 usda/14415		usda/14415
F	almond liqueur	amaretto	liquid,spirit	liqueur	?	alcohol		294 0 0 - - - - 35 35 - - 22	- 236.5882365 250.78353069 264.97882488 practice		memory
F	crème de menthe	mint liqueur	liquid,spirit	liqueur	?	alcohol	100	371 0.00 0.30 0.014 0.000 0.015 0.167 41.60 41.60 - 0.0 29.8 0 5 0 0 0.07 0.0 28.30 0.01	- 268.8 usda/14034		usda/14034
F	crème de cassis	cassis;blackcurrant liqueur	liquid,spirit	liqueur	?	alcohol		248 0 0 - - - - 40 40 - - 12.6	- 236.5882365 250.78353069 264.97882488 practice		memory
F	cherry brandy	cherry liqueur;maraschino;maraschino liqueur	liquid,spirit	liqueur	?	alcohol		265 0 0 - - - - 33 33 - - 19	- 236.5882365 250.78353069 264.97882488 practice		memory
F	limoncello	lemon liqueur	liquid,spirit	liqueur	?	alcohol		254 0 0 - - - - 25 25 - - 22	- 236.5882365 250.78353069 264.97882488 practice		memory
F	elderflower liqueur		liquid,spirit	liqueur	?	alcohol		184 0 0 - - - - 18 18 - - 16	- 236.5882365 250.78353069 264.97882488 practice		memory
F	sloe gin		liquid,spirit	liqueur	?	alcohol		224 0 0 - - - - 20 20 - - 20.5	- 236.5882365 250.78353069 264.97882488 practice		memory
F	hazelnut liqueur		liquid,spirit	liqueur	?hazelnut	alcohol		239 0 0 - - - - 30 30 - - 17	- 236.5882365 250.78353069 264.97882488 practice		memory
F	egg liqueur	advocaat	liquid,spirit	liqueur	?eggs	alcohol,raw-egg			- 236.5882365 250.78353069 264.97882488 practice		
F	herbal liqueur		liquid,spirit	liqueur	?	alcohol			- 236.5882365 250.78353069 264.97882488 practice		
F	bitters	aromatic bitters;cocktail bitters	liquid,spirit	liqueur	?	alcohol			- 224.758824675 230.6735305875 236.5882365 practice		
F	brewed coffee	black coffee;strong black coffee;strong coffee;filter coffee;cold coffee;hot coffee;strong brewed coffee;hot black coffee;cold brewed coffee	liquid	drink		vegan,vegetarian,caffeine	100	1 0.12 0.02 0.002 0.000 0.015 0.001 0.00 0.00 - 0.0 0.0 0 2 49 2 0.01 0.0 99.39 0.35	- 236.8 237 712/3 usda/14209		usda/14209
F	espresso	strong espresso;shot of espresso;espresso coffee;cold espresso	liquid	drink		vegan,vegetarian,caffeine	100	9 0.12 0.18 0.092 0.000 0.000 0.092 1.67 0.00 - 0.0 0.0 0 14 115 2 0.13 0.0 97.80 0.23	- 236.8 usda/14210	shot/- 25 30 35 practice;-/- 25 30 35 practice	usda/14210
F	instant coffee	instant coffee powder;instant coffee granules;instant espresso powder;espresso powder;instant espresso;coffee powder;coffee granules		drink		vegan,vegetarian,caffeine	100	353 12.20 0.50 0.197 0.000 0.041 0.196 75.40 0.00 - 0.0 0.0 0 37 3535 141 4.41 0.0 3.10 8.80	- 48 usda/14214	packet/- 2 usda/14214	usda/14214
F	ground coffee	coffee grounds;finely ground coffee;ground espresso		drink		vegan,vegetarian,caffeine			- 80 88 96 practice		
F	coffee beans	whole coffee beans;espresso beans		drink		vegan,vegetarian,caffeine			- 75 85 95 practice		
F	chicory coffee	chicory essence;chicory powder		drink		vegan,vegetarian	100	3 0.09 0.00 0.001 0.000 0.000 0.001 0.75 0.00 - 0.0 0.0 0 7 35 4 0.05 - 98.94 0.17	- 239.2 usda/14223		usda/14223
F	black tea	brewed tea;strong tea;hot tea;cold tea;strong black tea;hot black tea;brewed black tea	liquid	drink		vegan,vegetarian,caffeine	100	1 0.00 0.00 0.002 0.000 0.001 0.004 0.30 0.00 - 0.0 0.0 0 3 37 0 0.02 0.0 99.70 0.04	- 236.8 237 712/3 usda/14355		usda/14355
F	tea leaves	loose tea;loose-leaf tea;black tea leaves;earl grey tea leaves		drink		vegan,vegetarian,caffeine			- 86.4 103.2 120 practice		
F	tea bag	teabag;black tea bag;earl grey tea bag		drink		vegan,vegetarian,caffeine				-/- 2 2.5 3 practice	
F	green tea	brewed green tea	liquid	drink		vegan,vegetarian,caffeine	100	1 0.22 0.00 0.000 - 0.000 0.000 0.00 0.00 - 0.0 0.0 0 1 8 0 0.02 0.0 99.93 0.00	- 236.8 240.9 245 usda/14278		usda/14278
F	matcha	matcha powder;green tea powder		drink		vegan,vegetarian,caffeine			- 72 88.8 105.6 practice		
F	camomile tea	chamomile tea;herbal tea;peppermint tea	liquid	drink		vegan,vegetarian	100	1 0.00 0.00 0.002 0.000 0.001 0.005 0.20 0.00 - 0.0 0.0 0 1 9 2 0.08 0.0 99.70 0.01	- 236.8 237 712/3 usda/14545		usda/14545
F	hibiscus flowers	dried hibiscus flowers;dried hibiscus;hibiscus tea		drink		vegan,vegetarian					
F	cola	cola drink	liquid	drink		vegan,vegetarian,caffeine	100	37 0.07 0.02 0.000 0.000 0.000 0.000 9.56 8.97 - 0.0 0.0 0 4 2 2 0.11 0.0 90.31 0.04	- 236.5882365 242.5029424125 248.417648325 practice		usda/14400
F	ginger beer		liquid	drink		vegan,vegetarian			- 236.5882365 242.5029424125 248.417648325 practice		
F	ginger ale		liquid	drink		vegan,vegetarian	100	34 0.00 0.00 0.000 0.000 0.000 0.000 8.76 8.90 - 0.0 0.0 0 7 1 3 0.18 0.0 91.23 0.01	- 244 usda/14136		usda/14136
F	lemonade	clear lemonade;lemon-lime soda	liquid	drink		vegan,vegetarian			- 236.5882365 242.5029424125 248.417648325 practice		
F	tonic water		liquid	drink		vegan,vegetarian	100	34 0.00 0.00 0.000 0.000 0.000 0.000 8.80 8.80 - 0.0 0.0 0 12 0 1 0.01 0.0 91.10 0.10	- 244 usda/14155		usda/14155
F	kombucha		liquid	drink					- 236.5882365 242.5029424125 248.417648325 practice		
F	soy sauce	soya sauce;light soy sauce;shoyu;naturally brewed soy sauce	liquid	condiment	wheat,soybeans	vegan,vegetarian	100	53 8.14 0.57 0.073 0.000 0.088 0.263 4.93 0.40 - 0.8 0.0 0 5493 435 33 1.45 0.0 71.15 15.21	- 254.4 255 256 usda/16123		usda/16123
F	dark soy sauce		liquid	condiment	wheat,soybeans		100	53 8.14 0.57 0.073 0.000 0.088 0.263 4.93 0.40 - 0.8 0.0 0 5493 435 33 1.45 0.0 71.15 15.21	- 254.4 255 256 usda/16123		usda/16123/stand-in
F	low-sodium soy sauce	reduced-salt soy sauce;less-sodium soy sauce;reduced-sodium soy sauce;low-salt soy sauce	liquid	condiment	wheat,soybeans	vegan,vegetarian	100	57 9.05 0.30 0.035 0.000 0.042 0.138 5.59 0.50 - 0.7 0.0 0 3598 352 30 1.35 0.0 75.14 9.92	- 216 255 255 usda/16424		usda/16424
F	tamari	tamari soy sauce;gluten-free soy sauce;gluten-free tamari	liquid	condiment	?soybeans	vegan,vegetarian	100	60 10.51 0.10 0.011 0.000 0.017 0.044 5.57 1.70 - 0.8 0.0 0 5586 212 20 2.38 0.0 66.00 17.82	- 288 usda/16124		usda/16124
F	sweet soy sauce	kecap manis;ketjap manis		condiment	?soybeans				- 288 312 336 practice		
F	teriyaki sauce			condiment	?soybeans		100	89 5.93 0.02 0.000 0.000 0.000 0.000 15.56 14.10 - 0.1 0.0 0 3833 225 25 1.70 0.0 67.69 10.43	- 288 usda/06112		usda/06112
F	hoisin sauce	hoisin		condiment	?soybeans		100	220 3.31 3.39 0.568 - 0.963 1.698 44.08 27.26 - 2.8 0.0 3 1615 119 32 1.01 0.0 44.23 4.98	- 256 usda/06175		usda/06175
F	oyster sauce			condiment	?molluscs		100	51 1.35 0.25 0.043 - 0.073 0.066 10.92 0.00 - 0.3 0.0 0 2733 54 32 0.18 0.0 80.00 7.49	- 288 usda/06176		usda/06176
F	fish sauce	nam pla;nuoc mam;thai fish sauce;vietnamese fish sauce	liquid	condiment	fish	animal,fish	100	35 5.06 0.01 0.003 - 0.002 0.003 3.64 3.64 - 0.0 0.0 0 7851 288 43 0.78 0.0 71.07 20.22	- 288 usda/06179		usda/06179
F	Worcestershire sauce	worcester sauce	liquid	condiment	?fish	animal	100	78 0.00 0.00 0.000 - 0.000 0.000 19.46 10.03 - 0.0 0.0 0 980 800 107 5.30 0.0 78.54 2.00	- 272 275 275 usda/06971		usda/06971
F	ketchup	tomato ketchup;catsup		condiment	?		100	101 1.04 0.10 0.014 0.000 0.015 0.041 27.40 21.27 - 0.3 0.0 0 907 281 15 0.35 0.0 68.51 2.94	- 240 256 272 usda/11935	packet/- 9 usda/11935	usda/11935
F	brown sauce			condiment	?				- 240 264 288 practice		
F	barbecue sauce	BBQ sauce		condiment	?		100	172 0.82 0.63 0.045 0.000 0.082 0.101 40.77 33.24 0.35 0.9 0.0 0 1027 232 33 0.64 0.0 54.71 3.07	- 272 279 286 usda/06150		usda/06150
F	hot sauce	hot pepper sauce;pepper sauce		condiment	?		100	11 0.51 0.37 0.052 - 0.030 0.196 1.75 1.26 - 0.3 - 0 2643 144 8 0.48 - 89.98 7.39	- 225.6 228 230.4 usda/06168		usda/06168
F	sriracha	sriracha sauce;hot chilli sauce;chilli sauce;chili sauce;chile sauce		condiment	?		100	93 1.93 0.93 - - - - 19.16 15.11 - 2.2 - - 2124 321 18 1.64 - 71.84 6.14	- 312 usda/06631		usda/06631
F	sweet chilli sauce	sweet chili sauce;thai sweet chilli sauce		condiment	?				- 272 296 320 practice		
F	chilli paste	sambal oelek;chili paste;chilli garlic sauce;sambal;chili garlic sauce;chilli bean paste;doubanjiang		condiment	?				- 224 248 272 practice		
F	harissa	harissa paste;rose harissa		condiment	?				- 224 248 272 practice		
F	gochujang	korean chilli paste;korean chili paste		condiment	?				- 272 296 320 practice		
F	black bean sauce	fermented black beans;salted black beans		condiment	?soybeans				- 256 280 304 practice		
F	red curry paste	thai red curry paste;curry paste;thai curry paste		condiment	?				- 224 248 272 practice		
F	green curry paste	thai green curry paste		condiment	?				- 224 248 272 practice		
F	mayonnaise	mayo;whole-egg mayonnaise;good mayonnaise	fat	condiment	?eggs	vegetarian,animal	100	680 0.96 74.85 11.703 0.187 16.843 44.690 0.57 0.57 - 0.0 0.0 42 635 20 8 0.21 0.2 21.65 1.98	- 220 220.4 220.8 usda/04025	packet/- 10 usda/04025	usda/04025
F	light mayonnaise	reduced-fat mayonnaise		condiment	?eggs				- 224 240 256 practice		
F	vegan mayonnaise			condiment	?	vegan,vegetarian			- 208 224 240 practice		
F	salad cream			condiment	?eggs				- 224 240 256 practice		
F	tartare sauce	tartar sauce		condiment	?eggs		100	211 1.00 16.70 3.333 - 3.605 9.044 13.30 4.25 - 0.5 0.0 7 667 68 26 0.25 0.0 67.00 1.96			usda/27049
F	horseradish sauce	creamed horseradish		condiment	?		100	503 1.09 50.89 8.233 0.179 13.087 29.169 10.05 8.98 0.50 1.0 0.0 50 730 44 12 0.23 0.2 35.83 2.14	- 268.8 usda/27066		usda/27066
F	prepared horseradish	grated horseradish in vinegar;jarred horseradish		condiment	?		100	48 1.18 0.69 0.090 0.000 0.130 0.339 11.29 7.99 0.00 3.3 0.0 0 420 246 56 0.42 0.0 85.08 1.76	- 240 usda/02055		usda/02055
F	mint sauce			condiment	?				- 240 264 288 practice		
F	pesto	basil pesto;green pesto;pesto sauce;pesto alla genovese		condiment	?milk		100	418 9.83 37.60 7.070 0.398 22.155 6.546 10.09 6.33 2.20 1.8 - - 603 560 306 0.57 - 38.98 3.50	- 252 usda/06626		usda/06626
F	red pesto	sun-dried tomato pesto		condiment	?milk				- 224 248 272 practice		
F	salsa	tomato salsa;red salsa		condiment	?		100	29 1.52 0.17 0.021 - 0.018 0.078 6.64 4.01 0.00 1.9 0.0 0 711 275 30 0.42 0.0 89.28 2.39	- 259 260 288 usda/06164		usda/06164
F	salsa verde	green salsa;tomatillo salsa		condiment	?		100	38 1.13 0.89 0.000 - 0.000 0.000 6.36 3.50 - 1.9 0.0 0 600 259 9 0.65 0.0 89.52 2.10	- 240 usda/27047		usda/27047
F	guacamole			condiment	?						
F	tapenade	olive tapenade;olive paste		condiment	?				- 224 248 272 practice		
F	tomato chutney	tomato relish		condiment	?				- 256 288 320 practice		
F	mango chutney			condiment	?				- 272 296 320 practice		
F	fruit chutney	chutney;apple chutney		condiment	?				- 256 288 320 practice		
F	piccalilli			condiment	?mustard		100	121 1.50 0.90 0.149 0.000 0.170 0.397 26.64 23.88 - 1.5 0.0 0 527 200 23 1.40 0.0 68.90 2.06	- 245 usda/11983		usda/11983
F	mint jelly			condiment	?						
F	redcurrant jelly	currant jelly		condiment		vegan,vegetarian	100	266 0.15 0.02 0.005 - 0.001 0.004 69.95 51.22 - 1.0 0.0 0 30 54 7 0.19 0.0 29.77 0.12		packet/- 14 usda/19300	usda/19300/stand-in
F	yeast extract	savoury yeast extract;yeast extract spread		condiment	?barley		100	185 23.88 0.90 0.000 0.000 0.000 0.000 20.42 1.60 0.00 6.5 0.0 0 3380 2100 67 4.04 0.0 40.90 13.90	- 288 usda/43406		usda/43406
F	wasabi paste	wasabi;prepared wasabi		condiment	?		100	292 2.23 10.90 2.031 0.037 4.410 3.627 46.13 13.20 8.40 6.1 0.0 0 3390 182 41 0.50 0.0 31.70 9.04	- 312 316 320 usda/27064		usda/27064
F	vinaigrette	french dressing;oil and vinegar dressing		condiment	?		100	449 0.00 50.10 9.100 - 14.800 24.100 2.50 2.50 - 0.0 0.0 0 1 8 0 0.00 0.0 47.40 0.00	- 250 253 256 usda/04135		usda/04135
F	caesar dressing			condiment	?		100	542 2.17 57.85 8.789 - 13.504 32.857 3.30 2.81 - 0.5 0.0 39 1209 29 48 1.08 0.1 34.30 2.40	- 235 235.1 235.2 usda/43015		usda/43015
F	ranch dressing			condiment	?milk						
F	Dijon mustard	smooth dijon mustard;french mustard;smooth french mustard		mustard	?mustard	vegan,vegetarian	100	60 3.74 3.34 0.214 0.009 2.182 0.774 5.83 0.92 0.64 4.0 0.0 0 1104 152 63 1.61 0.0 83.72 3.37	- 240 249 264 usda/02046,practice		usda/02046/stand-in
F	wholegrain mustard	whole-grain mustard;grain mustard;grainy mustard;seeded mustard;coarse-grain mustard;coarse mustard		mustard	?mustard	vegan,vegetarian	100	60 3.74 3.34 0.214 0.009 2.182 0.774 5.83 0.92 0.64 4.0 0.0 0 1104 152 63 1.61 0.0 83.72 3.37	- 240 249 288 usda/02046,practice		usda/02046/stand-in
F	English mustard	prepared english mustard;hot english mustard;made english mustard		mustard	?mustard	vegan,vegetarian	100	60 3.74 3.34 0.214 0.009 2.182 0.774 5.83 0.92 0.64 4.0 0.0 0 1104 152 63 1.61 0.0 83.72 3.37	- 240 249 264 usda/02046,practice		usda/02046/stand-in
F	yellow mustard	american mustard;american yellow mustard;prepared yellow mustard		mustard	?mustard	vegan,vegetarian	100	60 3.74 3.34 0.214 0.009 2.182 0.774 5.83 0.92 0.64 4.0 0.0 0 1104 152 63 1.61 0.0 83.72 3.37	- 249 usda/02046		usda/02046
F	honey mustard			mustard	?mustard	honey			- 240 264 288 practice		
F	jam	fruit jam;fruit preserve;fruit jelly preserve;preserves	sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297
F	raspberry jam	seedless raspberry jam;raspberry preserves;red jam	sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297/stand-in
F	strawberry jam	strawberry preserves	sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297/stand-in
F	apricot jam	apricot preserves;apricot conserve;smooth apricot jam;apricot glaze	sugar	jam		vegan,vegetarian	100	242 0.70 0.20 0.010 - 0.000 0.000 64.40 43.40 - 0.3 0.0 0 40 77 20 0.49 0.0 34.50 0.20	- 320 usda/19719	packet/- 14 usda/19719	usda/19719
F	blackcurrant jam		sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297/stand-in
F	blackberry jam	bramble jelly	sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297/stand-in
F	cherry jam	black cherry jam	sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297/stand-in
F	plum jam	damson jam;plum butter;powidl	sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297/stand-in
F	fig jam		sugar	jam		vegan,vegetarian	100	278 0.37 0.07 0.010 - 0.038 0.000 68.86 48.50 - 1.1 0.0 0 32 77 20 0.49 0.0 30.47 0.23	- 320 usda/19297	packet/- 14 usda/19297	usda/19297/stand-in
F	orange marmalade	marmalade;seville orange marmalade;thick-cut marmalade;fine-cut marmalade	sugar	jam		vegan,vegetarian	100	246 0.30 0.00 0.000 - 0.000 0.000 66.30 60.00 - 0.7 0.0 0 56 37 38 0.15 0.0 33.20 0.20	- 320 usda/19303		usda/19303
F	lemon marmalade	ginger marmalade	sugar	jam		vegan,vegetarian	100	246 0.30 0.00 0.000 - 0.000 0.000 66.30 60.00 - 0.7 0.0 0 56 37 38 0.15 0.0 33.20 0.20	- 320 usda/19303		usda/19303/stand-in
F	lemon curd		sugar	jam	?eggs,milk	animal,vegetarian			- 272 304 336 practice		
F	fruit jelly	apple jelly;grape jelly;quince jelly;jelly preserve	sugar	jam		vegan,vegetarian	100	266 0.15 0.02 0.005 - 0.001 0.004 69.95 51.22 - 1.0 0.0 0 30 54 7 0.19 0.0 29.77 0.12		packet/- 14 usda/19300	usda/19300
F	quince paste	membrillo	sugar	jam		vegan,vegetarian					
F	mincemeat	fruit mincemeat	sugar	jam	?				- 270 295 320 practice		
F	cocoa powder	unsweetened cocoa powder;cocoa;natural cocoa powder;unsweetened cocoa;natural cocoa;baking cocoa		chocolate		vegan,vegetarian,caffeine	100	228 19.60 13.70 8.070 - 4.570 0.440 57.90 1.75 - 37.0 0.0 0 21 1524 128 13.86 0.0 3.00 5.80	- 82 85.048569375 95 usda/19165,mill,ci,cakebible;dipped 95 cakebible;sifted 75 cakebible;spooned 82 cakebible		usda/19165
F	alkalised cocoa powder	dutch-process cocoa powder;dutch-processed cocoa;dutch cocoa;dutch-process cocoa;dutched cocoa		chocolate		vegan,vegetarian,caffeine	100	220 18.10 13.10 7.760 - 4.390 0.420 58.30 1.76 - 29.8 0.0 0 19 2509 111 15.52 0.0 2.70 7.80	- 86 89.2 95 usda/19166,cakebible;dipped 95 cakebible;sifted 75 cakebible;spooned 92 cakebible		usda/19166
F	cocoa nibs	cacao nibs;raw cacao nibs		chocolate		vegan,vegetarian		600 13 50 30 - - - - - - 30	- 110 120 130 practice		memory
F	cacao powder	raw cacao powder;raw cacao		chocolate		vegan,vegetarian	100	228 19.60 13.70 8.070 - 4.570 0.440 57.90 1.75 - 37.0 0.0 0 21 1524 128 13.86 0.0 3.00 5.80	- 86 86.2 86.4 usda/19165		usda/19165/stand-in
F	cocoa mass	cacao mass;cocoa liquor;unsweetened chocolate;unsweetened baking chocolate;baking chocolate;bitter baking chocolate;100 % chocolate		chocolate	?	vegan,vegetarian	100	642 14.32 52.31 32.277 0.000 16.068 1.551 28.42 0.91 - 16.6 0.0 2 24 830 101 17.40 0.0 1.34 3.60	- 132 usda/19078;grated 132 usda/19078		usda/19078
F	drinking chocolate	hot chocolate powder;hot cocoa mix;cocoa mix;chocolate powder	sugar	chocolate	?		100	398 6.67 4.00 2.377 - 1.325 0.114 83.73 65.55 - 3.7 0.0 0 504 712 133 1.19 0.0 1.50 4.10			usda/14192
F	dark chocolate	plain chocolate;bittersweet chocolate;70 % dark chocolate;60 % dark chocolate;good dark chocolate;bitter chocolate;dark cooking chocolate;chopped dark chocolate;70 % cocoa chocolate;dark chocolate couverture;dark couverture		chocolate	?		100	598 7.79 42.63 24.489 0.030 12.781 1.257 45.90 23.99 - 10.9 - 3 20 715 73 11.90 - 1.37 2.32	- 150 162.5 175 practice;chopped 150 162.5 175 practice	bar/- 101 usda/19904	usda/19904
F	semi-sweet chocolate	50 % dark chocolate;semisweet chocolate;baking chocolate semi-sweet		chocolate	?		100	480 4.20 30.00 17.750 - 9.966 0.966 63.90 54.50 - 5.9 0.0 0 11 365 32 3.13 0.0 0.70 1.20	- 168 173 182 usda/19080;chips 168 173 182 usda/19080		usda/19080
F	dark chocolate chips	chocolate chips;semisweet chocolate chips;semi-sweet chocolate chips;plain chocolate chips;bittersweet chocolate chips;chocolate chunks;mini chocolate chips;dark chocolate drops;semi-sweet morsels		chocolate	?		100	480 4.20 30.00 17.750 - 9.966 0.966 63.90 54.50 - 5.9 0.0 0 11 365 32 3.13 0.0 0.70 1.20	- 170 170.048569375 170.09713875 mill;chips 168 173 182 usda/19080		usda/19080/stand-in
F	milk chocolate	milk cooking chocolate;chopped milk chocolate;milk couverture		chocolate	?milk	animal	100	535 7.65 29.66 18.509 - 7.186 1.376 59.40 51.50 - 3.4 0.0 23 79 372 189 2.35 0.0 1.50 1.78	- 168 usda/19120;chips 168 usda/19120	bar/- 44 usda/19120	usda/19120
F	milk chocolate chips	milk chocolate drops		chocolate	?milk	animal	100	535 7.65 29.66 18.509 - 7.186 1.376 59.40 51.50 - 3.4 0.0 23 79 372 189 2.35 0.0 1.50 1.78	- 168 usda/19120;chips 168 usda/19120	bar/- 44 usda/19120	usda/19120/stand-in
F	white chocolate	white couverture;chopped white chocolate		chocolate	?milk	animal	100	539 5.87 32.09 19.412 0.000 9.097 1.013 59.24 59.00 - 0.2 0.0 21 90 286 199 0.24 0.0 1.30 1.50	- 170 197 224 usda/19087;chips 170 usda/19087	bar/- 85 usda/19087	usda/19087
F	white chocolate chips	white chips;white chocolate drops		chocolate	?milk	animal	100	539 5.87 32.09 19.412 0.000 9.097 1.013 59.24 59.00 - 0.2 0.0 21 90 286 199 0.24 0.0 1.30 1.50	- 170 197 224 usda/19087;chips 170 usda/19087	bar/- 85 usda/19087	usda/19087/stand-in
F	chocolate syrup			chocolate	?		100	350 4.60 8.90 3.980 - 3.857 0.278 62.90 34.82 - 2.8 0.0 1 346 284 49 1.30 0.0 21.80 1.80	- 304 usda/19348		usda/19348
F	chocolate sprinkles	chocolate vermicelli;chocolate strands		chocolate	?						
F	carob chips			chocolate	?		100	540 8.15 31.36 29.018 0.000 0.483 0.295 56.29 34.11 - 3.8 0.0 1 107 633 303 1.29 0.0 1.54 2.66		bar/- 87 usda/19071	usda/19071
F	marshmallows	white marshmallows;mini marshmallows;miniature marshmallows	sugar	sweet	?	animal,meat	100	318 1.80 0.20 0.056 - 0.080 0.047 81.30 57.56 - 0.1 0.0 0 80 5 3 0.23 0.0 16.40 0.30	- 42.5242846875 46.26214234375 50 usda/19116,mill;miniature 42.5242846875 46.26214234375 50 usda/19116,mill	-/- 7.2 usda/19116	usda/19116
F	marshmallow fluff	marshmallow cream;marshmallow creme	sugar	sweet	?		100	322 0.80 0.30 0.056 - 0.080 0.047 79.00 46.80 - 0.1 0.0 0 80 5 3 0.22 0.0 19.80 0.10			usda/19365
F	toffee	butter toffee;toffee bits	sugar	sweet	?milk	animal	100	560 1.07 32.75 20.565 0.674 8.964 1.222 64.72 63.47 - 0.0 - 104 135 51 34 0.03 - 0.55 0.66		-/- 12 usda/19383	usda/19383
F	caramels	soft caramels;caramel sweets;soft toffees	sugar	sweet	?milk	animal	100	382 4.60 8.10 2.476 - 1.542 3.478 77.00 65.50 - 0.0 0.0 7 245 214 138 0.14 0.0 8.50 1.80		-/- 10.1 usda/19074	usda/19074
F	butterscotch	butterscotch chips	sugar	sweet	?milk	animal	100	391 0.03 3.30 2.065 - 0.845 0.122 90.40 80.46 - 0.0 0.0 9 391 3 4 0.01 0.0 5.25 1.01		-/- 16/3 usda/19070	usda/19070
F	fudge	vanilla fudge	sugar	sweet	?milk	animal	100	383 1.05 5.45 3.382 0.179 1.399 0.227 82.15 79.77 - 0.0 0.0 15 47 49 38 0.02 0.0 10.85 0.34			usda/19103
F	nougat	white nougat;soft nougat;turrón	sugar	sweet	?		100	398 3.33 1.67 1.667 - 0.000 0.000 92.39 44.97 - 3.3 0.0 0 33 105 32 0.59 0.0 2.15 0.46		-/- 14 usda/43046	usda/43046
F	peanut brittle		sugar	sweet	?peanuts		100	486 7.57 18.98 4.144 - 8.064 4.558 71.24 51.33 - 2.5 0.0 12 445 168 27 1.22 0.0 0.70 1.51			usda/19148
F	halva	sesame halva;halwa	sugar	sweet	?sesame		100	469 12.49 21.52 4.127 - 8.194 8.481 60.49 - - 4.5 0.0 0 195 187 33 4.53 - 3.67 1.83			usda/19117
F	boiled sweets	hard candy;barley sugar	sugar	sweet	?		100	394 0.00 0.20 0.000 - 0.000 0.000 98.00 62.90 - 0.0 0.0 0 38 5 3 0.30 0.0 1.30 0.50		-/small 3 usda/19107;-/- 3 6 6 usda/19107	usda/19107
F	jelly cubes	jelly crystals;flavored gelatin mix	sugar	sweet	?	animal,meat	100	381 7.80 0.00 0.000 - 0.000 0.000 90.50 86.04 - 0.0 0.0 0 466 7 3 0.13 0.0 1.00 0.70			usda/19172
F	Turkish delight	lokum	sugar	sweet	?						
F	candy canes	peppermint candies;mint humbugs	sugar	sweet	?		100	394 0.00 0.20 0.000 - 0.000 0.000 98.00 62.90 - 0.0 0.0 0 38 5 3 0.30 0.0 1.30 0.50		-/small 3 usda/19107;-/- 3 6 6 usda/19107	usda/19107/stand-in
F	liquorice	licorice;soft liquorice	sugar	sweet	?wheat						
F	honeycomb toffee	cinder toffee;sponge toffee	sugar	sweet	?						
F	custard	ready-made custard;vanilla custard;crème anglaise	sugar	sweet	?milk	animal			- 241.32000123 250.78353069 260.24706015 practice		
F	meringue	meringue nests;meringue shells	sugar	sweet	eggs	vegetarian,animal		380 5 0 0 - - - 93 92 - 0			memory
F	whey protein powder	whey protein;protein powder		protein	?milk	animal	100	352 78.13 1.56 0.781 0.000 0.158 0.299 6.25 0.00 - 3.1 0.0 16 156 500 469 1.13 0.0 3.44 10.55	- 3200/33 usda/14066		usda/14066
`;

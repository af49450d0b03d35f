#include "tests/pages/told_everywhere.h"

#include "app/pages/annual/annual_presenter.h"
#include "app/pages/questions/questions_presenter.h"
#include "app/pages/rigged_today/coupling_panel.h"
#include "app/pages/rigged_today/record_list.h"
#include "app/pages/rigged_today/rigged_today_presenter.h"
#include "app/pages/rigged_today/summary_presenter.h"
#include "app/pages/trends/coupling_list.h"
#include "app/pages/trends/now_card.h"
#include "app/pages/trends/trends_presenter.h"
#include "app/report/record_report.h"
#include "app/report/review_report.h"
#include "app/widgets/verdict_card.h"
#include "app/wording/record_words.h"
#include "app/wording/review_report_words.h"
#include "app/wording/review_words.h"
#include "app/wording/rigged_words.h"
#include "app/wording/standing_words.h"
#include "core/exchange/csv.h"
#include "core/exchange/review_tables.h"
#include "core/store/airframe_facts.h"

#include <QLabel>

#include <algorithm>
#include <gtest/gtest.h>
#include <map>

namespace rig::test {

namespace {

// Moved and was outside are said only where there is time to look back.
Says withoutLookingBack(Says says)
{
    return says == Says::Moved || says == Says::Scatters || says == Says::WasOutside ||
                   says == Says::OutsideBefore
               ? Says::Inside
               : says;
}

// Everything else that a row says beside a tick would be a warning.
bool isOnlyHowLittleIsKnown(const QString& sign)
{
    return sign == "no reading noted as part-seated" || sign.startsWith("thin band") ||
           sign.startsWith("no reading at");
}

void addTrends(TempStore& store, AirframeId airframe, std::vector<Told>& all)
{
    const TrendsView view = must(TrendsPresenter{store.records(), store.clock()}.view(airframe));
    CouplingList list;
    list.display(view, {});
    for (std::size_t i = 0; i < view.couplings.size(); ++i) {
        const CouplingTrend& trend = view.couplings[i];
        all.push_back({"Trends", trend.coupling.name, trend.standing.says});
        const auto* row = list.findChild<TrendRow*>(QStringLiteral("trendRow%1").arg(i));
        EXPECT_EQ(row->accessibleDescription(), StandingWords::word(trend.standing));
        const CouplingReview* review = view.review.find(trend.coupling.id);
        if (!review || trend.standing.says != Says::Inside)
            continue;
        for (const QString& sign : ReviewWords::signs(*review))
            EXPECT_TRUE(isOnlyHowLittleIsKnown(sign)) << sign.toStdString();
    }
}

void addAnnual(TempStore& store, AirframeId airframe, std::vector<Told>& all)
{
    const AnnualView view = must(AnnualPresenter{store.records(), store.clock()}.view(airframe, {}));
    for (const AnnualRow& row : view.rows) {
        all.push_back({"Before the annual", row.name.toStdString(), row.says});
        for (const QString& sign : row.signs)
            EXPECT_TRUE(row.says != Says::Inside || isOnlyHowLittleIsKnown(sign))
                << row.name.toStdString() << " has a tick beside: " << sign.toStdString();
    }
    for (const AnnualHeadline& headline : view.headlines)
        EXPECT_NE(headline.shape, MarkShape::DiscTick) << headline.sentence.toStdString();
}

// The last cell but one of the report's list tells what stands out; behind it stands the page.
void expectNoTickBesideAWarning(const std::vector<Cell>& row)
{
    const bool hasTick = std::ranges::any_of(row, [](const Cell& cell) {
        return std::ranges::any_of(cell, [](const CellText& text) { return text.mark == Says::Inside; });
    });
    if (!hasTick)
        return;
    ASSERT_GE(row.size(), 2U);
    for (const CellText& text : row[row.size() - 2])
        for (const QString& sign : text.text.split(ReviewReportWords::betweenSigns()))
            EXPECT_TRUE(isOnlyHowLittleIsKnown(sign) || sign.startsWith("nothing in ")) << sign.toStdString();
}

// The marks of the tables whose first column names couplings.
void addMarks(const std::string& place, const std::vector<Block>& blocks, const QString& head, bool looksBack,
              std::vector<Told>& all)
{
    for (const Block& block : blocks) {
        const auto* table = std::get_if<TableBlock>(&block);
        if (!table || table->columns.front().head != head)
            continue;
        for (const std::vector<Cell>& row : table->rows) {
            if (looksBack)
                expectNoTickBesideAWarning(row);
            for (const Cell& cell : row)
                for (const CellText& text : cell)
                    if (text.mark)
                        all.push_back({place, row.front().front().text.toStdString(), *text.mark, looksBack});
        }
    }
}

void addTable(const AirframeReview& review, std::vector<Told>& all)
{
    static const std::map<std::string, Says> kWords{{"outside", Says::Outside},
                                                    {"question-open", Says::Asked},
                                                    {"stopped", Says::Stopped},
                                                    {"part-seated", Says::PartSeated},
                                                    {"not-secured", Says::NotSecured},
                                                    {"no-band", Says::NoBandYet},
                                                    {"hidden", Says::Hidden},
                                                    {"cannot-tell", Says::CannotTell},
                                                    {"not-read", Says::NotRead},
                                                    {"near-edge", Says::NearEdge},
                                                    {"moved", Says::Moved},
                                                    {"no-gap", Says::NoGap},
                                                    {"scatter-changed", Says::Scatters},
                                                    {"was-outside", Says::WasOutside},
                                                    {"outside-before", Says::OutsideBefore},
                                                    {"facts-in-doubt", Says::InDoubt},
                                                    {"inside", Says::Inside}};
    const std::vector<CsvRow> rows = csvRows(reviewCouplingsTable(review), ',');
    const auto& heads = rows.front().fields;
    const auto column = static_cast<std::size_t>(std::ranges::find(heads, "standing") - heads.begin());
    ASSERT_LT(column, heads.size());
    for (std::size_t i = 1; i < rows.size(); ++i)
        all.push_back({"couplings.csv", rows[i].fields.front(), kWords.at(rows[i].fields[column])});
}

// The line below the top bar, the chooser and the questions page all count from these.
void expectTheSameQuestions(TempStore& store, AirframeId airframe, const AirframeReview& review)
{
    std::map<CouplingId, int> open;
    for (const QuestionRow& row : must(QuestionsPresenter{store.records()}.view(airframe)).rows)
        if (row.story.isOpen() && row.story.question.coupling)
            ++open[*row.story.question.coupling];
    for (const CouplingReview& one : review.couplings) {
        EXPECT_EQ(one.standing.openQuestions, open[one.coupling.id]) << one.coupling.name;
        EXPECT_EQ(one.openQuestions.size(), static_cast<std::size_t>(open[one.coupling.id]));
    }
}

// Of each coupling that is read in this record and not interrupted since.
void addCards(const RiggedTodayPresenter& presenter, const RiggedTodayView& view, std::vector<Told>& all)
{
    CouplingPanel panel;
    for (const Coupling& coupling : view.couplings) {
        RiggingSession session;
        session.record = view.record->id;
        session.place.coupling = coupling.id;
        const CouplingSheet sheet = must(presenter.sheet(view, session));
        panel.display(view, sheet, {});
        const auto* card = panel.findChild<VerdictCard*>();
        EXPECT_EQ(card->says().has_value(), hasGap(coupling) && !sheet.readings.empty());
        if (card->says())
            all.push_back({"the verdict card", coupling.name, *card->says(), false});
    }
}

void addRecord(TempStore& store, AirframeId airframe, std::vector<Told>& all)
{
    RiggedTodayPresenter presenter{store.records(), store.clock()};
    const RiggedTodayView view = must(presenter.view(airframe));
    if (!view.record)
        return;
    RecordList list;
    RiggingSession session;
    session.place = {RecordPlace::Kind::Close, {}};
    list.display(view, session);
    for (std::size_t i = 0; i < view.couplings.size(); ++i) {
        const CouplingStanding& standing = view.standings.at(view.couplings[i].id);
        all.push_back({"Rigged today", view.couplings[i].name, standing.says, false});
        const std::size_t place = i + (view.isFirstOfSeason ? 1 : 0) + (view.now ? 1 : 0);
        const auto* row = list.findChild<MarkRow*>(QStringLiteral("recordRow%1").arg(place));
        EXPECT_EQ(row->accessibleName().toStdString(), view.couplings[i].name);
        const QString said = row->accessibleDescription();
        const QString word = StandingWords::word(standing);
        EXPECT_EQ(said.startsWith(word) || said.startsWith(RiggedWords::stopFor(word)),
                  standing.isSaidFirst())
            << said.toStdString();
    }
    if (view.now)
        addCards(presenter, view, all);
    const auto summary =
        must(SummaryPresenter{store.records(), store.clock()}.view(airframe, view.record->id));
    addMarks("the record's glance", recordBlocks(summary.summary), RecordWords::coupling(), false, all);
}

} // namespace

std::vector<Told> toldEverywhere(TempStore& store, AirframeId airframe)
{
    std::vector<Told> all;
    addTrends(store, airframe, all);
    addAnnual(store, airframe, all);
    const AirframeFacts facts = must(factsOf(store.records(), airframe));
    const AirframeReview review =
        airframeReviewOf(facts, reviewPeriods(facts, store.clock().now().localDay()).front());
    addMarks("the report", reviewBlocks(facts, review), ReviewReportWords::couplingOrMatter(), true, all);
    addTable(review, all);
    expectTheSameQuestions(store, airframe, review);
    addRecord(store, airframe, all);
    return all;
}

std::vector<std::string> disagreements(const std::vector<Told>& all)
{
    std::vector<std::string> found;
    std::map<std::string, const Told*> first;
    for (const Told& one : all) {
        const Told& other = *first.try_emplace(one.coupling, &one).first->second;
        const bool isSame =
            one.looksBack ? one.says == other.says : one.says == withoutLookingBack(other.says);
        if (!isSame)
            found.push_back(one.place + " says " + std::to_string(static_cast<int>(one.says)) + " of " +
                            one.coupling + ", " + other.place + " says " +
                            std::to_string(static_cast<int>(other.says)));
    }
    return found;
}

namespace {

// All that stands in the rows of these tables that begin with that name and have a mark.
QString rowsOf(const std::vector<Block>& blocks, const QString& head, const QString& name)
{
    QStringList said;
    for (const Block& block : blocks) {
        const auto* table = std::get_if<TableBlock>(&block);
        if (!table || table->columns.front().head != head)
            continue;
        for (const std::vector<Cell>& row : table->rows) {
            if (row.front().front().text != name)
                continue;
            for (const Cell& cell : row)
                for (const CellText& text : cell)
                    said << text.text;
        }
    }
    return said.join(QLatin1Char('\n'));
}

QString cardOf(const RiggedTodayPresenter& presenter, const RiggedTodayView& view, CouplingId coupling)
{
    CouplingPanel panel;
    RiggingSession session;
    session.record = view.record->id;
    session.place.coupling = coupling;
    const CouplingSheet sheet = must(presenter.sheet(view, session));
    panel.display(view, sheet, {});
    return panel.findChild<VerdictCard*>()->accessibleName();
}

} // namespace

std::map<std::string, QString> saidOfLeftAileron(TempStore& store, AirframeId airframe)
{
    const QString name{"Left aileron"};
    const auto isNamed = [&name](const auto& one) { return one.coupling.name == name.toStdString(); };
    std::map<std::string, QString> said;

    const TrendsView trends = must(TrendsPresenter{store.records(), store.clock()}.view(airframe));
    const auto trend = std::ranges::find_if(trends.couplings, isNamed);
    CouplingList chooser;
    chooser.display(trends, {});
    said["Trends, the list"] =
        chooser.findChild<TrendRow*>(QStringLiteral("trendRow%1").arg(trend - trends.couplings.begin()))
            ->accessibleDescription();
    NowCard card;
    card.display(*trend, {}, store.clock().now().localDay());
    said["Trends, the card"] = card.findChild<QLabel*>("nowTitle")->text();

    const AnnualView annual = must(AnnualPresenter{store.records(), store.clock()}.view(airframe, {}));
    const auto row = std::ranges::find(annual.rows, name, &AnnualRow::name);
    said["Before the annual"] = row->saysInWords;
    said["Before the annual, the signs"] = row->signs.join(QLatin1Char('\n'));

    const AirframeFacts facts = must(factsOf(store.records(), airframe));
    const AirframeReview review =
        airframeReviewOf(facts, reviewPeriods(facts, store.clock().now().localDay()).front());
    said["the report"] = rowsOf(reviewBlocks(facts, review), ReviewReportWords::couplingOrMatter(), name);
    const auto reviewed = std::ranges::find_if(review.couplings, isNamed);
    said["the report, what stands out"] = ReviewWords::gravest(*reviewed);

    RiggedTodayPresenter presenter{store.records(), store.clock()};
    const RiggedTodayView view = must(presenter.view(airframe));
    RecordList list;
    RiggingSession session;
    session.place = {RecordPlace::Kind::Close, {}};
    list.display(view, session);
    for (const auto* one : list.findChildren<MarkRow*>())
        if (one->accessibleName() == name)
            said["Rigged today, the list"] = one->accessibleDescription();
    said["the verdict card"] = cardOf(presenter, view, reviewed->coupling.id);
    const auto summary =
        must(SummaryPresenter{store.records(), store.clock()}.view(airframe, view.record->id));
    said["the record's glance"] = rowsOf(recordBlocks(summary.summary), RecordWords::coupling(), name);
    return said;
}

} // namespace rig::test

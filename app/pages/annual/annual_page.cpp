#include "app/pages/annual/annual_page.h"

#include "app/blocks/laid_picture.h"
#include "app/pages/annual/annual_panel.h"
#include "app/pages/annual/link_name.h"
#include "app/pages/annual/panel_columns.h"
#include "app/pages/annual/report_preview.h"
#include "app/pages/annual/review_table.h"
#include "app/pages/annual/stands_out_card.h"
#include "app/pages/period_box.h"
#include "app/pages/statement_bench.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/widgets/pressable.h"
#include "app/widgets/wrap_layout.h"
#include "app/wording/annual_words.h"
#include "app/wording/period_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/review_words.h"
#include "app/wording/statement_words.h"
#include "app/wording/window_words.h"
#include "core/day_entry.h"

#include <QHBoxLayout>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <map>
#include <utility>

namespace rig {

namespace {

constexpr int kGap = 14;
constexpr double kShiftsHeight = 132;
constexpr double kHeadWidth = 1500; // at the usual text size

std::optional<PictureBlock> shiftsPicture(const std::vector<ShiftDay>& shifts)
{
    if (shifts.empty())
        return std::nullopt;
    return PictureBlock{kShiftsHeight, [shifts](QSizeF size, const FontSizes& fonts) {
                            return laidPicture(layoutShifts(shifts, size, fonts));
                        }};
}

std::optional<PictureBlock> offsetsPicture(const std::vector<OffsetRow>& rows)
{
    const auto isTold = [](const OffsetRow& row) { return row.offset.has_value(); };
    if (std::ranges::none_of(rows, isTold))
        return std::nullopt;
    return PictureBlock{heightOfOffsets(rows, FontSizes{}), [rows](QSizeF size, const FontSizes& fonts) {
                            return laidPicture(layoutOffsets(rows, size, fonts));
                        }};
}

} // namespace

AnnualPage::AnnualPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : Page{parent}, m_presenter{records, clock}, m_clock{clock}
{
    setObjectName("annual");
    setAccessibleName(WindowWords::beforeTheAnnual());
    setFocusPolicy(Qt::ClickFocus); // hands it on: by Tab that would pass over what stands before
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    m_stack = new QStackedWidget;
    m_scroll = new FlowScroll{makeContent()};
    m_scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_stack->addWidget(m_scroll);
    m_message = labelOf({}, "body", "annualMessage");
    m_message->setAlignment(Qt::AlignCenter);
    m_message->setMargin(24);
    m_stack->addWidget(m_message);
    m_preview = new ReportPreview{prompts};
    m_stack->addWidget(m_preview);
    m_stack->addWidget(makeStatements(records));
    connect(m_preview, &ReportPreview::backAsked, this, &AnnualPage::showTable);
    connect(m_preview, &ReportPreview::problemArose, this, &AnnualPage::problemArose);
    layout->addWidget(m_stack);
    setLook({});
    showMessage(AnnualWords::noAirframe());
}

QWidget* AnnualPage::makeContent()
{
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout{content};
    layout->setContentsMargins(kGap, kGap, kGap, kGap);
    layout->setSpacing(kGap);
    layout->addWidget(makeHead());
    m_standsOut = new StandsOutCard;
    layout->addWidget(m_standsOut);
    connect(m_standsOut, &StandsOutCard::couplingOpened, this,
            [this](CouplingId coupling) { openTrend(coupling, {}); });
    layout->addWidget(makeTableCard());
    layout->addWidget(labelOf(ReviewWords::caution(), "caution"));
    layout->addWidget(makePanels());
    layout->addStretch(1);
    return content;
}

QWidget* AnnualPage::makeHead()
{
    auto* head = new QWidget;
    m_head = new QBoxLayout{QBoxLayout::LeftToRight, head};
    m_head->setContentsMargins(6, 0, 6, 0);
    m_head->setSpacing(10);
    auto* words = new QVBoxLayout;
    words->setSpacing(0);
    m_title = labelOf({}, "title", "annualTitle");
    m_counted = labelOf({}, "soft", "annualCounted");
    words->addWidget(m_title);
    words->addWidget(m_counted);
    m_said = labelOf({}, "strong", "statementKept");
    m_said->hide();
    words->addWidget(m_said);
    m_head->addLayout(words, 1);
    m_head->addWidget(makeChoices());
    return head;
}

QWidget* AnnualPage::makeChoices()
{
    auto* holder = new QWidget;
    auto* choices = new WrapLayout{10, false, holder};
    choices->setContentsMargins(0, 0, 0, 0);
    m_periods = new PeriodBox{"annualPeriod"};
    m_report = buttonOf(AnnualWords::report(), "annualReport", "primary");
    auto* finding = buttonOf(StatementWords::noteAFinding(), "noteFinding");
    auto* ask = buttonOf(StatementWords::ask(), "askQuestion");
    for (QPushButton* button : {finding, ask}) {
        button->setFocusPolicy(Qt::TabFocus); // what is in view stays chosen
        button->setAutoDefault(true);
    }
    for (QWidget* one : std::initializer_list<QWidget*>{m_periods, finding, ask, m_report})
        choices->addWidget(one);
    connect(finding, &QPushButton::clicked, this, [this] { state(StatementKind::Finding); });
    connect(ask, &QPushButton::clicked, this, [this] { state(StatementKind::Question); });
    connect(m_periods, &PeriodBox::periodChosen, this, &AnnualPage::choosePeriod);
    connect(m_periods, &PeriodBox::left, this, [this] { m_table->setFocus(); });
    connect(m_report, &QPushButton::clicked, this, &AnnualPage::showReport);
    return holder;
}

QWidget* AnnualPage::makeStatements(Records& records)
{
    m_statements = new StatementBench{records, m_clock};
    connect(m_statements, &StatementBench::opened, this, [this] { m_stack->setCurrentWidget(m_statements); });
    connect(m_statements, &StatementBench::putAside, this, [this] { endStating({}); });
    connect(m_statements, &StatementBench::kept, this, &AnnualPage::endStating);
    connect(m_statements, &StatementBench::problemArose, this, &AnnualPage::problemArose);
    return m_statements;
}

bool AnnualPage::isStating() const
{
    return m_stack->currentWidget() == m_statements;
}

// About what has the focus: what stands out, what lay outside, what is asked, else the row of the table.
void AnnualPage::state(StatementKind kind)
{
    const QString link = focusedLink();
    StatementEntry entry;
    entry.kind = kind;
    entry.airframe = *m_airframe;
    entry.coupling = m_table->chosen();
    entry.day = QString::fromStdString(dayText(m_view.period().to));
    QString about;
    for (const AnnualHeadline& one : m_view.headlines)
        if (linkName("headline", one.coupling) == link)
            entry.coupling = one.coupling;
    if (const AnnualStory* story = storyAt(link)) {
        entry.coupling = story->coupling;
        entry.reading = story->reading;
        if (story->reading)
            about = StatementWords::about(story->title);
        if (story->day)
            entry.day = QString::fromStdString(dayText(*story->day));
    }
    m_leftFrom = Place{link, m_scroll->verticalScrollBar()->value()};
    m_statements->open(entry, about);
}

// The story that leads there; null where none does.
const AnnualStory* AnnualPage::storyAt(const QString& link) const
{
    const auto in = [&link](const AnnualPanel& panel,
                            const std::vector<AnnualStory>& stories) -> const AnnualStory* {
        const auto found = std::ranges::find_if(
            stories, [&](const AnnualStory& one) { return one.coupling && panel.linkTo(one) == link; });
        return found == stories.end() ? nullptr : &*found;
    };
    const AnnualStory* outside = in(*m_outside, m_view.outside);
    return outside ? outside : in(*m_questions, m_view.questions);
}

void AnnualPage::endStating(const QString& sentence)
{
    m_stack->setCurrentWidget(m_scroll);
    if (!sentence.isEmpty()) {
        read();
        emit factsChanged();
    }
    sayIn(m_said, sentence);
    if (m_leftFrom && !sentence.isEmpty())
        m_leftFrom->scrolled = 0; // where it is said
    m_table->setFocus();
    comeBack();
}

QString AnnualPage::leftUndone() const
{
    return m_statements->hasTyped() ? StatementWords::leftUndone() : QString{};
}

void AnnualPage::catchUp()
{
    m_statements->catchUp();
    showAirframe(m_airframe);
}

QWidget* AnnualPage::makeTableCard()
{
    auto* card = new QFrame;
    card->setProperty("card", true);
    auto* layout = new QVBoxLayout{card};
    layout->setContentsMargins(12, 8, 12, 8);
    layout->setSpacing(4);
    m_table = new ReviewTable;
    layout->addWidget(m_table);
    m_neverSeen = labelOf({}, "soft", "neverSeen");
    m_neverSeen->hide();
    layout->addWidget(m_neverSeen);
    auto* foot = new QHBoxLayout;
    m_meaning = buttonOf(AnnualWords::meaning(), "columnMeaning", "link");
    m_meaning->setCheckable(true);
    foot->addWidget(m_meaning);
    foot->addWidget(labelOf(AnnualWords::tableKeys(), "soft"), 1);
    layout->addLayout(foot);
    QStringList meanings;
    for (int column = 0; column < kAnnualColumns; ++column)
        meanings << AnnualWords::meaningOf(static_cast<AnnualColumn>(column));
    meanings << AnnualWords::meaningOfMarks();
    m_meanings = labelOf(meanings.join(QLatin1Char('\n')), "body", "columnMeanings");
    m_meanings->setMargin(8);
    m_meanings->hide();
    layout->addWidget(m_meanings);
    connect(m_table, &ReviewTable::couplingChosen, this,
            [this](CouplingId coupling) { m_periods->showCoupling(coupling); });
    connect(m_table, &ReviewTable::couplingOpened, this,
            [this](CouplingId coupling) { openTrend(coupling, {}); });
    connect(m_meaning, &QPushButton::toggled, this, &AnnualPage::showMeaning);
    return card;
}

QWidget* AnnualPage::makePanels()
{
    m_panels = new PanelColumns;
    const auto add = [this](const QString& title, const QString& legend, const char* name) {
        auto* panel = new AnnualPanel{title, legend, name};
        m_panels->add(panel);
        return panel;
    };
    m_shifts = add(AnnualWords::shiftsTitle(), AnnualWords::shiftsLegend(), "shiftsPanel");
    m_measurers = add(AnnualWords::measurersTitle(), AnnualWords::measurersLegend(), "measurersPanel");
    m_outside = add(AnnualWords::outsideTitle(), {}, "outsidePanel");
    m_questions = add(AnnualWords::questionsTitle(), {}, "questionsPanel");
    m_gauges = add(AnnualWords::gaugesTitle(), {}, "gaugesPanel");
    m_changes = add(AnnualWords::changesTitle(), {}, "changesPanel");
    m_tooFew = add(AnnualWords::tooFewTitle(), {}, "tooFewPanel");
    m_riggings = add(AnnualWords::riggingsTitle(), {}, "riggingsPanel");
    for (const AnnualPanel* panel : {m_outside, m_questions})
        connect(panel, &AnnualPanel::storyOpened, this, &AnnualPage::openTrend);
    return m_panels;
}

void AnnualPage::setLook(const Look& look)
{
    m_look = look;
    fitHead();
    m_standsOut->setLook(look);
    m_table->setLook(look);
    m_preview->setLook(look);
    m_statements->setLook(look);
    m_panels->setTextScale(look.fonts.scale);
    for (AnnualPanel* panel : m_panels->findChildren<AnnualPanel*>())
        panel->setLook(look);
}

// Large text has no room for the title and the choices side by side.
void AnnualPage::fitHead()
{
    m_head->setDirection(width() < kHeadWidth * m_look.fonts.scale ? QBoxLayout::TopToBottom
                                                                   : QBoxLayout::LeftToRight);
}

void AnnualPage::resizeEvent(QResizeEvent* event)
{
    Page::resizeEvent(event);
    fitHead();
}

void AnnualPage::showAirframe(std::optional<AirframeId> airframe)
{
    if (m_airframe != airframe) {
        m_leftFrom.reset();
        m_scroll->verticalScrollBar()->setValue(0);
    }
    const bool wasStating = m_airframe == airframe && isStating();
    sayIn(m_said, {});
    const bool isPreviewed = m_airframe == airframe && m_stack->currentWidget() == m_preview;
    m_airframe = airframe;
    read();
    const bool isShown = m_stack->currentWidget() == m_scroll;
    if (isPreviewed && isShown) // only the look has changed
        showReport();
    if (wasStating && isShown)
        m_stack->setCurrentWidget(m_statements);
}

void AnnualPage::showReport()
{
    auto facts = m_presenter.facts(*m_airframe);
    if (!facts) {
        emit problemArose(ProblemWords::sentence(facts.problem(), {}));
        return;
    }
    m_stack->setCurrentWidget(m_preview); // before it is laid out: then it knows its width
    m_preview->display(
        std::move(facts).value(), m_view.period(), m_clock.now().localDay(),
        [this](const std::vector<std::string>& ends) { return m_presenter.evidence(ends); },
        [this](RecordId record) { return m_presenter.content(record); });
    m_preview->setFocus();
}

void AnnualPage::showTable()
{
    m_stack->setCurrentWidget(m_scroll);
    m_table->setFocus();
}

void AnnualPage::choosePeriod(const PeriodOffer& offer)
{
    m_period->choose(*m_airframe, offer);
    read();
    m_table->chooseFirst();
}

void AnnualPage::read()
{
    if (!m_airframe)
        return showMessage(AnnualWords::noAirframe());
    auto view = m_presenter.view(*m_airframe, m_period->of(*m_airframe));
    if (!view) {
        const QString sentence = ProblemWords::sentence(view.problem(), {});
        showMessage(sentence);
        emit problemArose(sentence);
        return;
    }
    m_view = std::move(view).value();
    display();
}

void AnnualPage::display()
{
    if (m_view.rows.empty())
        return showMessage(AnnualWords::noCouplings());
    const QString focused = focusedLink();
    m_title->setText(m_view.title);
    m_counted->setText(m_view.counted);
    std::map<CouplingId, QString> names;
    for (const AnnualRow& row : m_view.rows)
        names.emplace(row.coupling, row.name);
    m_periods->display(m_view.offers, m_view.chosen, names);
    m_standsOut->display(m_view);
    m_table->display(m_view.rows);
    sayIn(m_neverSeen, m_view.neverSeen);
    displayPanels();
    m_stack->setCurrentWidget(m_scroll);
    if (window()->focusWidget() == this) // it came to the page before there was a table
        m_table->setFocus();
    focusAgain(focused);
}

void AnnualPage::displayPanels()
{
    m_shifts->showPictures(
        {{shiftsPicture(m_view.shifts), AnnualWords::shiftsTitle(), m_view.shiftSentences}});
    m_measurers->showPictures(
        {{offsetsPicture(m_view.persons), AnnualWords::measurersTitle(), m_view.personSentences},
         {offsetsPicture(m_view.gauges), AnnualWords::gaugesTitle(), m_view.gaugeSentences}});
    m_outside->showStories(m_view.outside, ReviewWords::noneOutside(), AnnualWords::outsideHint());
    m_questions->showStories(m_view.questions, ReviewWords::noQuestion(), AnnualWords::questionsHint());
    m_gauges->showStories(m_view.gaugeStories, AnnualWords::noGauge());
    m_changes->showStories(m_view.changes, ReviewWords::noChange());
    m_tooFew->showStories(m_view.tooFew, {});
    m_riggings->showSentences(m_view.riggings);
    m_panels->arrange();
}

void AnnualPage::showMessage(const QString& sentence)
{
    m_message->setText(sentence);
    m_stack->setCurrentWidget(m_message);
}

void AnnualPage::showMeaning(bool shown)
{
    m_meaning->setChecked(shown);
    m_meanings->setVisible(shown);
}

void AnnualPage::leave()
{
    if (m_stack->currentWidget() == m_preview)
        m_stack->setCurrentWidget(m_scroll);
}

void AnnualPage::openTrend(CouplingId coupling, const std::optional<ReadingId>& reading)
{
    m_leftFrom = Place{focusedLink(), m_scroll->verticalScrollBar()->value()};
    emit trendWanted(coupling, reading);
}

void AnnualPage::goTo(Pressable* link)
{
    if (!link)
        return;
    link->setFocus();
    m_scroll->bringIntoView(link);
}

QString AnnualPage::focusedLink() const
{
    const auto* link = qobject_cast<Pressable*>(m_scroll->widget()->focusWidget());
    return link && link->hasFocus() ? link->objectName() : QString{};
}

// What led somewhere before the page was made anew.
void AnnualPage::focusAgain(const QString& link)
{
    auto* same = link.isEmpty() ? nullptr : m_scroll->findChild<Pressable*>(link);
    if (same)
        same->setFocus();
}

void AnnualPage::comeBack()
{
    const Place place = std::exchange(m_leftFrom, std::nullopt).value_or(Place{});
    focusAgain(place.link);
    // What was made anew is shown in the next turn only; before that there is nothing to scroll over.
    QMetaObject::invokeMethod(
        this, [this, place] { m_scroll->scrollTo(place.scrolled); }, Qt::QueuedConnection);
}

void AnnualPage::focusInEvent(QFocusEvent* event)
{
    Page::focusInEvent(event);
    if (m_stack->currentWidget() != m_scroll)
        return;
    m_table->setFocus();
    if (m_leftFrom)
        comeBack();
}

void AnnualPage::keyPressEvent(QKeyEvent* event)
{
    QScrollBar* bar = m_scroll->verticalScrollBar();
    const bool hasContent = m_stack->currentWidget() == m_scroll;
    if (hasContent && isKey(*event, StatementWords::keyFinding())) {
        state(StatementKind::Finding);
    } else if (hasContent && isKey(*event, StatementWords::keyAsk())) {
        state(StatementKind::Question);
    } else if (hasContent && isKey(*event, PeriodWords::key())) {
        bar->setValue(0);
        m_periods->open();
    } else if (hasContent && isKey(*event, AnnualWords::keyMeaning())) {
        showMeaning(!m_meaning->isChecked());
    } else if (hasContent && isKey(*event, AnnualWords::keyReport())) {
        showReport();
    } else if (hasContent && isKey(*event, AnnualWords::keyHeadlines())) {
        goTo(nextOf(m_standsOut->links()));
    } else if (hasContent && isKey(*event, AnnualWords::keyOutside())) {
        goTo(nextOf(m_outside->links()));
    } else if (event->key() == Qt::Key_PageDown) {
        bar->triggerAction(QScrollBar::SliderPageStepAdd);
    } else if (event->key() == Qt::Key_PageUp) {
        bar->triggerAction(QScrollBar::SliderPageStepSub);
    } else {
        Page::keyPressEvent(event);
    }
}

} // namespace rig

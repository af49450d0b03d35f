#include "app/pages/annual/annual_page.h"

#include "app/blocks/laid_picture.h"
#include "app/pages/annual/annual_panel.h"
#include "app/pages/annual/panel_columns.h"
#include "app/pages/annual/report_preview.h"
#include "app/pages/annual/review_table.h"
#include "app/pages/annual/stands_out_card.h"
#include "app/widgets/flow_scroll.h"
#include "app/widgets/parts.h"
#include "app/wording/annual_words.h"
#include "app/wording/problem_words.h"
#include "app/wording/review_words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr int kGap = 14;
constexpr double kShiftsHeight = 132;
constexpr double kHeadWidth = 1080; // at the usual text size

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

AnnualPage::AnnualPage(const Records& records, const Clock& clock, Prompts& prompts, QWidget* parent)
    : Page{parent}, m_presenter{records, clock}, m_clock{clock}
{
    setObjectName("annual");
    setFocusPolicy(Qt::StrongFocus);
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
    m_periods = new QComboBox;
    m_periods->setObjectName("annualPeriod");
    m_periods->setAccessibleName(AnnualWords::periodName());
    m_periods->setToolTip(AnnualWords::period());
    m_periods->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    auto* name = labelOf(AnnualWords::period(), "label");
    name->setWordWrap(false);
    name->setBuddy(m_periods);
    m_report = buttonOf(AnnualWords::report(), "annualReport", "primary");
    auto* choices = new QHBoxLayout;
    choices->setSpacing(10);
    choices->addStretch(1);
    choices->addWidget(name);
    choices->addWidget(m_periods);
    choices->addWidget(m_report);
    m_head->addLayout(words, 1);
    m_head->addLayout(choices);
    connect(m_periods, &QComboBox::activated, this, [this](int index) {
        read(m_view.periods[static_cast<std::size_t>(index)]);
        m_table->chooseFirst();
        m_table->setFocus();
    });
    connect(m_report, &QPushButton::clicked, this, &AnnualPage::showReport);
    return head;
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
    connect(m_table, &ReviewTable::couplingOpened, this, [this](CouplingId coupling) {
        emit trendWanted(m_view.chosen == 0 ? std::nullopt : std::optional{m_view.period()}, coupling);
    });
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
    return m_panels;
}

void AnnualPage::setLook(const Look& look)
{
    m_look = look;
    fitHead();
    m_standsOut->setLook(look);
    m_table->setLook(look);
    m_preview->setLook(look);
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
        m_period.reset();
        m_scroll->verticalScrollBar()->setValue(0);
    }
    const bool isPreviewed = m_airframe == airframe && m_stack->currentWidget() == m_preview;
    m_airframe = airframe;
    read(m_period);
    if (isPreviewed && m_stack->currentWidget() == m_scroll) // only the look has changed
        showReport();
}

void AnnualPage::showReport()
{
    auto facts = m_presenter.facts(*m_airframe);
    if (!facts) {
        emit problemArose(ProblemWords::sentence(facts.problem(), {}));
        return;
    }
    m_stack->setCurrentWidget(m_preview); // before it is laid out: then it knows its width
    m_preview->display(std::move(facts).value(), m_view.period(), m_clock.now().localDay());
    m_preview->setFocus();
}

void AnnualPage::showTable()
{
    m_stack->setCurrentWidget(m_scroll);
    m_table->setFocus();
}

void AnnualPage::read(const std::optional<ReviewPeriod>& period)
{
    m_period = period;
    if (!m_airframe)
        return showMessage(AnnualWords::noAirframe());
    auto view = m_presenter.view(*m_airframe, period);
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
    m_title->setText(m_view.title);
    m_counted->setText(m_view.counted);
    m_periods->clear();
    for (const ReviewPeriod& period : m_view.periods)
        m_periods->addItem(AnnualWords::choice(period));
    m_periods->setCurrentIndex(static_cast<int>(m_view.chosen));
    m_standsOut->display(m_view);
    m_table->display(m_view.rows);
    displayPanels();
    m_stack->setCurrentWidget(m_scroll);
    if (window()->focusWidget() == this) // it came to the page before there was a table
        m_table->setFocus();
}

void AnnualPage::displayPanels()
{
    m_shifts->showPictures(
        {{shiftsPicture(m_view.shifts), AnnualWords::shiftsTitle(), m_view.shiftSentences}});
    m_measurers->showPictures(
        {{offsetsPicture(m_view.persons), AnnualWords::measurersTitle(), m_view.personSentences},
         {offsetsPicture(m_view.gauges), AnnualWords::gaugesTitle(), m_view.gaugeSentences}});
    m_outside->showStories(m_view.outside, ReviewWords::noneOutside());
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

void AnnualPage::focusInEvent(QFocusEvent* event)
{
    Page::focusInEvent(event);
    if (m_stack->currentWidget() == m_scroll)
        m_table->setFocus();
}

void AnnualPage::keyPressEvent(QKeyEvent* event)
{
    QScrollBar* bar = m_scroll->verticalScrollBar();
    const bool hasContent = m_stack->currentWidget() == m_scroll;
    if (hasContent && isKey(*event, AnnualWords::keyPeriod())) {
        m_periods->setFocus();
        m_periods->showPopup();
    } else if (hasContent && isKey(*event, AnnualWords::keyMeaning())) {
        showMeaning(!m_meaning->isChecked());
    } else if (hasContent && isKey(*event, AnnualWords::keyReport())) {
        showReport();
    } else if (event->key() == Qt::Key_PageDown) {
        bar->triggerAction(QScrollBar::SliderPageStepAdd);
    } else if (event->key() == Qt::Key_PageUp) {
        bar->triggerAction(QScrollBar::SliderPageStepSub);
    } else {
        Page::keyPressEvent(event);
    }
}

} // namespace rig

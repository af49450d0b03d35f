#include "app/pages/learn/measuring_panel.h"

#include "app/widgets/choice_box.h"
#include "app/widgets/leaf_row.h"
#include "app/widgets/parts.h"
#include "app/wording/study_words.h"

#include <QCheckBox>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

MeasuringPanel::MeasuringPanel(QWidget* parent) : QWidget{parent}
{
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(10);
    layout->addWidget(labelOf(StudyWords::measuringTitle(), "title"));
    layout->addWidget(labelOf(StudyWords::measuringWhat(), "body"));
    m_where = labelOf({}, "section", "measuringWhere");
    layout->addWidget(m_where);
    QLabel* label = labelOf(StudyWords::gauge(), "label");
    m_gauge = new ChoiceBox{withoutMnemonic(StudyWords::gauge())};
    m_gauge->setObjectName("measuringGauge");
    label->setBuddy(m_gauge);
    layout->addWidget(label);
    layout->addWidget(m_gauge, 0, Qt::AlignLeft);
    m_notice = labelOf({}, "caution", "measuringNotice");
    layout->addWidget(m_notice);
    m_leaves = new LeafRow;
    m_leaves->setObjectName("measuringLeaves");
    layout->addWidget(m_leaves);
    m_refused = labelOf({}, "problem", "measuringRefused");
    m_kept = labelOf({}, "label", "measuringKept");
    m_refused->hide();
    m_kept->hide();
    layout->addWidget(m_refused);
    layout->addWidget(m_kept);
    m_show = buttonOf(StudyWords::showOwn(), "measuringShow");
    layout->addWidget(m_show, 0, Qt::AlignLeft);
    m_own = labelOf({}, "body", "measuringOwn");
    layout->addWidget(m_own);
    m_private = labelOf({}, "soft", "measuringPrivate");
    layout->addWidget(m_private);
    m_share = new QCheckBox{StudyWords::share()};
    m_share->setObjectName("measuringShare");
    layout->addWidget(m_share);
    layout->addStretch(1);
    connect(m_gauge, &QComboBox::activated, this, &MeasuringPanel::showLeaves);
    connect(m_leaves, &LeafRow::readingChosen, this, [this](const GaugeReading& reading) {
        const auto gauge = m_gauge->chosen<GaugeId>();
        if (m_coupling && gauge)
            emit readingTaken(m_view.person, *m_coupling, *gauge, reading);
    });
    connect(m_leaves, &LeafRow::entryRefused, this,
            [this](const QString& sentence) { sayIn(m_refused, sentence); });
    connect(m_show, &QPushButton::clicked, this, [this] {
        m_isShowing = !m_isShowing;
        showOwn();
    });
    connect(m_share, &QCheckBox::toggled, this, [this](bool isOn) { emit shareAsked(m_view.person, isOn); });
}

void MeasuringPanel::setLook(const Look& look)
{
    m_leaves->setLook(look);
}

void MeasuringPanel::display(const MeasuringView& view, const QString& person,
                             std::optional<CouplingId> coupling)
{
    const bool isAnother = m_view.person != view.person;
    if (isAnother) {
        m_isShowing = false;
        m_gauge->setCurrentIndex(0);
    }
    const auto found =
        coupling ? std::ranges::find(view.couplings, *coupling, &Coupling::id) : view.couplings.end();
    const auto here = found == view.couplings.end() ? std::nullopt : std::optional{found->id};
    if (isAnother || here != m_coupling) {
        m_leaves->clearTyped();
        sayIn(m_refused, {});
        sayIn(m_kept, {});
    }
    m_view = view;
    m_coupling = here;
    m_where->setText(here ? StudyWords::measureAt(QString::fromStdString(found->name)) : StudyWords::noGap());
    const auto gauge = m_gauge->chosen<GaugeId>();
    m_gauge->fill(StudyWords::chooseGauge(), view.gauges);
    m_gauge->choose(gauge);
    m_private->setText(StudyWords::isPrivate(person));
    const QSignalBlocker silent{m_share};
    m_share->setChecked(view.isShared);
    showLeaves();
    showOwn();
}

void MeasuringPanel::showLeaves()
{
    const auto chosen = m_gauge->chosen<GaugeId>();
    const auto gauge = chosen ? std::ranges::find(m_view.gauges, *chosen, &Gauge::id) : m_view.gauges.end();
    const bool mayRead = m_coupling && gauge != m_view.gauges.end();
    m_leaves->setGauge(gauge == m_view.gauges.end() ? GaugeSet{} : gauge->set, std::nullopt);
    m_leaves->setEnabled(mayRead);
    sayIn(m_notice, m_coupling && !mayRead ? StudyWords::chooseGaugeFirst() : QString{});
}

void MeasuringPanel::showOwn()
{
    m_show->setText(m_isShowing ? StudyWords::hideOwn() : StudyWords::showOwn());
    QStringList says;
    const OwnPractice& own = m_view.own;
    if (own.readings == 0)
        says << StudyWords::noneOwn();
    else
        says << StudyWords::ownCount(own.readings);
    if (own.repeatSd)
        says << StudyWords::repeats(*own.repeatSd, *own.repeatSdInterval);
    else if (own.readings > 0)
        says << StudyWords::tooFew();
    if (own.limitedByStep)
        says << StudyWords::limitedByStep();
    if (own.readings > 0)
        says << (own.offset ? StudyWords::offset(*own.offset, *own.offsetInterval) : StudyWords::noOffset());
    sayIn(m_own, m_isShowing ? says.join(QLatin1Char('\n')) : QString{});
}

void MeasuringPanel::showKept()
{
    sayIn(m_refused, {});
    sayIn(m_kept, StudyWords::kept(m_view.own.readings));
}

bool MeasuringPanel::takeKey(QKeyEvent* event)
{
    return m_leaves->isEnabled() && m_leaves->takeKey(event);
}

} // namespace rig

#include "app/pages/setup/surface_form.h"

#include "app/wording/coupling_words.h"
#include "app/wording/setup_words.h"
#include "app/wording/surface_words.h"

#include <QComboBox>
#include <QLineEdit>

namespace rig {

SurfaceForm::SurfaceForm(QWidget* parent) : Form{SetUpWords::saveWithKey(), true, parent}
{
    using Words = SurfaceWords;
    m_name = addLine({"surfaceName", Words::name(), Words::nameHint(), Field::SurfaceName});
    m_kind = addChoice({"surfaceKind", Words::kind(), Words::kindHint(), {}});
    m_side = addChoice({"surfaceSide", Words::side(), {}, {}});
    m_unit = addChoice({"surfaceUnit", Words::unit(), {}, {}});
    m_senseCall = addLine({"senseCall", Words::senseCall(), {}, {}}, Width::Whole);
    m_upNominal = addLine({"upNominal", Words::upNominal(), Words::figureHint(), Field::UpNominal});
    m_upTolerance = addLine({"upTolerance", Words::upTolerance(), {}, Field::UpTolerance});
    m_downNominal = addLine({"downNominal", Words::downNominal(), {}, Field::DownNominal});
    m_downTolerance = addLine({"downTolerance", Words::downTolerance(), {}, Field::DownTolerance});
    m_mostPlay = addLine({"mostPlay", Words::mostPlay(), {}, Field::MostPlay});
    m_reference =
        addLine({"manualReference", Words::reference(), Words::referenceHint(), Field::ManualReference});
    m_measuredAt = addLine({"measuredAt", Words::measuredAt(), Words::measuredAtHint(), Field::MeasuredAt},
                           Width::Whole);
    for (int i = 0; i <= static_cast<int>(SurfaceKind::Other); ++i)
        m_kind->addItem(Words::kindName(static_cast<SurfaceKind>(i)));
    for (const Side side : {Side::None, Side::Left, Side::Right})
        m_side->addItem(CouplingWords::sideName(side));
    for (const DeflectionUnit unit : {DeflectionUnit::Degrees, DeflectionUnit::Millimetres})
        m_unit->addItem(Words::unitName(unit));
    connect(m_kind, &QComboBox::currentIndexChanged, this, &SurfaceForm::showUsualCall);
    showUsualCall();
}

void SurfaceForm::showUsualCall()
{
    const auto kind = static_cast<SurfaceKind>(m_kind->currentIndex());
    setHint(m_senseCall, SurfaceWords::senseCallHint(SurfaceWords::usualCall(kind)));
}

SurfaceEntry SurfaceForm::entry() const
{
    SurfaceEntry entry;
    entry.name = m_name->text();
    entry.kind = static_cast<SurfaceKind>(m_kind->currentIndex());
    entry.side = static_cast<Side>(m_side->currentIndex());
    entry.senseCall = m_senseCall->text();
    entry.unit = static_cast<DeflectionUnit>(m_unit->currentIndex());
    entry.measuredAt = m_measuredAt->text();
    entry.upNominal = m_upNominal->text();
    entry.upTolerance = m_upTolerance->text();
    entry.downNominal = m_downNominal->text();
    entry.downTolerance = m_downTolerance->text();
    entry.mostPlay = m_mostPlay->text();
    entry.reference = m_reference->text();
    return entry;
}

void SurfaceForm::setEntry(const SurfaceEntry& entry)
{
    m_name->setText(entry.name);
    m_kind->setCurrentIndex(static_cast<int>(entry.kind));
    m_side->setCurrentIndex(static_cast<int>(entry.side));
    m_senseCall->setText(entry.senseCall);
    m_unit->setCurrentIndex(static_cast<int>(entry.unit));
    m_measuredAt->setText(entry.measuredAt);
    m_upNominal->setText(entry.upNominal);
    m_upTolerance->setText(entry.upTolerance);
    m_downNominal->setText(entry.downNominal);
    m_downTolerance->setText(entry.downTolerance);
    m_mostPlay->setText(entry.mostPlay);
    m_reference->setText(entry.reference);
}

} // namespace rig

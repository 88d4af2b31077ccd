import { z } from 'zod'
import { choice, quantity } from '../fact.ts'

export const exposure = z
  .strictObject({
    terrain: choice('Terrain', ['urban', 'suburban', 'open', 'coastal'], { help: 'What stands between the wall and the wind.', from: 'detailReview' }),
    windSpeed: quantity('speed', 'Basic wind speed', { help: 'Of the load standard that the adopted code names.', from: 'detailReview', between: ['10 mph', '300 mph'] }),
    windPressure: quantity('arealLoad', 'Design wind pressure', { help: 'On the veneer at this opening.', from: 'detailReview', between: ['0 psf', '300 psf'] }),
    seismicDesignCategory: choice('Seismic design category', ['A', 'B', 'C', 'D0', 'D1', 'D2', 'D', 'E', 'F'], { help: 'As the adopted code assigns it.', from: 'detailReview' }),
    building: choice('Building', ['oneOrTwoFamily', 'townhouse', 'other'], { help: 'Some limits bind townhouses differently.', from: 'detailReview' }),
  })
  .meta({ id: 'ExposureInput', title: 'Exposure' })
